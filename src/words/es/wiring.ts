/** Words of the wiring drawing and of the table beside it. */
export const wiringWords = {
  heading: 'Cableado de cada programador',
  title: (controller: string) => `Cableado, programador ${controller}`,
  titleAlike: (controllers: string) => `Cableado, programadores ${controllers}, una estación cada uno`,
  caption: (controller: string) =>
    `Bornes de ${controller}, sin escala. Un rombo es un empalme; dónde está figura en el plano de obra ejecutada. Lo mismo figura en la tabla.`,
  captionAlike: (controllers: string) =>
    `Dibujado para uno de ${controllers}; las longitudes figuran en el cuadro de cables.`,
  alt: (controller: string, rows: readonly string[], common: string) =>
    `Programador ${controller}. ${rows.join('; ')}.${common ? ` ${common}.` : ''}`,
  altRow: (terminal: string, to: string, wires: string, splices: number) =>
    `borne ${terminal} a ${to}${wires ? `, ${wires}` : ''}${splices > 0 ? `, ${splices === 1 ? 'un empalme' : `${splices} empalmes`}` : ''}`,
  altCommon: (label: string, sensors: readonly string[]) =>
    `Todas las estaciones comparten el ${label}${sensors.length > 0 ? `, con ${sensors.join(' y ')} en él` : ''}`,
  master: 'VM',
  masterName: 'Válvula maestra',
  pump: 'B',
  pumpName: 'Relé de bomba',
  mains: 'RED DESPUÉS',
  common: 'C',
  commonLabel: (colour: string) => (colour ? `común: ${colour}` : 'común'),
  noColour: 'color sin facilitar',
  wires: (colour: string, runs: string) => [colour, runs].filter(Boolean).join(' · '),
  run: (size: string, length: string) => `${size} ${length}`,
  coils: (count: number, ohm: string) => `${count} bobinas${ohm ? `, ${ohm}` : ''}`,
  halves: (open: string, close: string) => `abrir ${open}, cerrar ${close}`,
  contactUnknown: 'contacto sin anotar',
  contact: { closed: 'contacto cerrado', open: 'contacto abierto' },
  terminal: 'Borne',
  to: 'A',
  box: 'Arqueta',
  colours: 'Colores',
  size: 'Sección y longitud de un sentido',
  splices: 'Empalmes',
  reads: 'En el programador',
  none: '–',
  threeLeads:
    'Tres hilos: abrir, cerrar y común. El programador da el impulso al común con uno de los dos; los hilos nunca se cambian para invertirlo. Primera cifra: común a abrir; segunda: común a cerrar.',
  closedInCommon: (names: string) =>
    `${names}: normalmente cerrado, en el común. Mientras está abierto ninguna estación de este programador recibe impulso, aunque siga corriendo el programa.`
}
