import type { CautionId } from '../../domain/safety/cautions.ts'

/** Words of fault finding: the same steps in the binder and, shorter, on the box page. */
interface StepWords {
  readonly title: string
  /** Test equipment; empty where eyes are enough. */
  readonly needs: string
  readonly why: string
  readonly todo: readonly string[]
  readonly seen: readonly (readonly [sign: string, means: string])[]
  /** The same for a phone, where every letter weighs: cautions first, then what to do, then the signs. */
  readonly brief: {
    readonly cautions: readonly (readonly [id: CautionId, text: string])[]
    readonly todo: readonly string[]
    readonly seen: readonly string[]
  }
}

const steps = {
  'by-hand': {
    title: 'Abrir la válvula a mano',
    needs: 'llave de válvula, protección ocular',
    why: 'Separa una avería del agua de una avería de los hilos antes de sacar el multímetro.',
    todo: [
      'Vea que el agua llega a la arqueta: la llave de corte, el contador, el dispositivo antirreflujo, el filtro y cualquier válvula general previa están abiertos.',
      'Abra despacio la válvula, por su tornillo de purga o con un cuarto de vuelta del solenoide, y ciérrela de nuevo a mano.'
    ],
    seen: [
      ['Corre y se detiene a mano', 'La parte del agua está bien. Siga.'],
      [
        'No abre',
        'Llave de paso cerrada, falta de presión, control de caudal apretado, orificio obstruido o válvula montada al revés.'
      ],
      [
        'Abre y no se detiene',
        'Cierre la llave de corte. Después: arenilla o membrana rota, purga abierta, suciedad bajo el émbolo, válvula montada al revés o menos caudal del que la válvula necesita para cerrar (goteo).'
      ]
    ],
    brief: {
      cautions: [['stored-pressure', 'El agua sale a presión. Gire despacio, con la cara a un lado.']],
      todo: [],
      seen: [
        'Corre y se detiene a mano: la parte del agua está bien, siga.',
        'Sigue cerrada: sin presión, control de caudal apretado, orificio obstruido, montada al revés.',
        'No se detiene: cierre la llave de corte. Arenilla, membrana rota, purga abierta, poco caudal.'
      ]
    }
  },
  battery: {
    title: 'Batería en carga',
    needs: 'voltímetro que retenga la lectura más baja, o una carga de prueba fija como la da la ficha técnica',
    why: 'Una batería cansada parece buena en reposo y cede con el impulso.',
    todo: [
      'Mida entre los bornes de la batería en reposo.',
      'Mida otra vez con la carga de prueba, o retenga la lectura más baja mientras arranca una estación: un voltímetro corriente no ve un impulso de centésimas de segundo.',
      'Después de un cambio, vea abrir y cerrar cada válvula.'
    ],
    seen: [
      ['Buena en reposo, cae en carga', 'Batería débil, contacto corroído, frío o química equivocada.'],
      [
        'Aceptable en la primera visita de una temporada',
        'Ponga un juego nuevo de todos modos: las pilas alcalinas dan menos con frío (de memoria).'
      ]
    ],
    brief: {
      cautions: [['battery-handling', 'Las pilas en cortocircuito o que pierden queman. Haga coincidir más y menos.']],
      todo: ['Mida en reposo y después con una carga de prueba o con un voltímetro que retenga la lectura más baja.'],
      seen: ['Cae en carga: juego débil, contacto corroído, frío, tipo equivocado.']
    }
  },
  coil: {
    title: 'La bobina correcta, y entera',
    needs: 'óhmetro',
    why: 'Una bobina de CA no puede enclavar, y una cortada o en cortocircuito no puede moverse.',
    todo: [
      'Desconecte los dos hilos de la bobina y mida entre ellos.',
      'Lea también la marca: los ohmios por sí solos no siempre distinguen los tipos.'
    ],
    seen: [
      ['Dentro del margen de esta estación', 'La bobina está entera. Siga.'],
      [
        '20 a 60 Ω',
        'Lo que mide una bobina buena de 24 V CA (práctica común, sin fuente). Si lleva la marca AC, monte una bobina de enclavamiento de CC.'
      ],
      [
        'Unos 2 a 10 Ω',
        'Habitual en bobinas de enclavamiento de dos hilos de la clase de 9 V; algunas de la clase de 12 V miden 10 a 40 Ω (de memoria).'
      ],
      [
        '0 a 1 Ω, o sin lectura',
        'Bobina en cortocircuito o hilos que se tocan; bobina o hilo cortados (práctica común, sin fuente).'
      ]
    ],
    brief: {
      cautions: [],
      todo: ['Desconecte los dos hilos, mida la bobina y lea su marca.'],
      seen: [
        '20 a 60 Ω y marca AC: bobina equivocada (práctica común, sin fuente).',
        '0 a 1 Ω: en cortocircuito. Sin lectura: cortada.'
      ]
    }
  },
  pulse: {
    title: 'Prueba de impulso en la bobina',
    needs: 'una batería buena de los voltios nominales de la bobina',
    why: 'Muestra si la bobina y el émbolo se mueven, sin el programador ni los hilos largos.',
    todo: [
      'Desconecte antes el par del programador.',
      'Apártese: la válvula puede abrir.',
      'Toque con los hilos de la bobina la batería un momento, una décima de segundo más o menos (práctica común, sin fuente), y suelte. Después cambie los hilos y toque otra vez.',
      'Nunca mantenga una batería en la bobina ni le ponga CA: no está hecha para corriente continuada.',
      'Deje la válvula cerrada y conecte el par como estaba.'
    ],
    seen: [
      ['Hace clic en los dos sentidos', 'Uno abre, el otro cierra. La bobina está bien. Siga.'],
      [
        'Hace clic en un solo sentido',
        'Puede que ya estuviera así: pruebe los dos otra vez. Si no, batería débil, émbolo atascado o imán cansado.'
      ],
      ['No hace clic', 'La bobina o el émbolo no funcionan: cámbiela.']
    ],
    brief: {
      cautions: [
        ['stored-pressure', 'La válvula puede abrir a presión. Desconecte el par del programador y apártese.'],
        ['ac-on-latching', 'Nunca mantenga una batería en la bobina ni le ponga CA: las dos cosas la queman.']
      ],
      todo: [
        'Tóquela con una batería de los voltios de la bobina una décima de segundo más o menos (práctica común, sin fuente), y después con los hilos cambiados.'
      ],
      seen: [
        'Clic en los dos sentidos: bien. En uno: pruebe otra vez; émbolo atascado. Ninguno: no funciona.',
        'Deje la válvula cerrada.'
      ]
    }
  },
  loop: {
    title: 'Desde el lado del programador',
    needs: 'óhmetro, plano de obra ejecutada',
    why: 'Una sola lectura abarca la bobina, los dos hilos y todos los empalmes.',
    todo: [
      'Pregunte qué se ha cavado hace poco y siga el trazado en el plano de obra ejecutada.',
      'Desconecte el par del programador y mida entre sus hilos.',
      'Mida cada hilo a tierra: se espera que no haya lectura o que sea muy alta (de memoria).'
    ],
    seen: [
      ['Dentro del margen de esta estación', 'Bobina, hilos y empalmes están bien.'],
      ['Mucho más alta', 'Empalme malo, hilo mellado o humedad en uno de ellos. Rehaga el empalme.'],
      ['Mucho más baja', 'Hilos que se tocan o dos bobinas en paralelo.'],
      [
        'Unidos entre sí en la válvula, los hilos miden como los hilos solos',
        'Los hilos están bien: la avería es de la bobina o de su conector.'
      ],
      [
        'Ohmios correctos, pero solo funciona junto a la arqueta',
        'Hilo demasiado largo o demasiado fino: un hilo más grueso o un programador más cercano.'
      ],
      [
        'Bien en la recepción, mal una temporada después',
        'Empalme húmedo: la corriente continua lo corroe deprisa (de memoria).'
      ]
    ],
    brief: {
      cautions: [],
      todo: ['Desconecte el par del programador y mida entre sus hilos.'],
      seen: [
        'Más alta: empalme malo o húmedo, hilo mellado. Más baja: hilos que se tocan o dos bobinas en paralelo.',
        'Correcta, pero solo funciona junto a la arqueta: hilo demasiado largo o fino.'
      ]
    }
  },
  polarity: {
    title: 'Polaridad',
    needs: '',
    why: 'Con sus hilos cambiados una válvula cierra con el impulso de apertura y abre con el de cierre.',
    todo: ['Arranque la estación en el programador, párela y mire la válvula.'],
    seen: [
      [
        'Cierra cuando debería abrir, o riega a todas horas menos a las suyas',
        'Cambie los dos hilos en el empalme y véala abrir y cerrar dos veces.'
      ]
    ],
    brief: {
      cautions: [],
      todo: [],
      seen: ['Cierra cuando debería abrir: cambie los dos hilos en el empalme y véala abrir y cerrar dos veces.']
    }
  },
  program: {
    title: 'Programa',
    needs: 'ficha de programa',
    why: 'Una válvula sana hace lo que le manda un programa equivocado.',
    todo: ['Compare reloj, días, horas de inicio y tiempos de riego con la ficha de programa.'],
    seen: [
      ['Riega a otra hora', 'Reloj, a.m. por p.m., reloj que se desvió u horario de verano.'],
      ['Riega dos veces', 'Una segunda hora de inicio o dos programas para una estación.'],
      [
        'Riega en un día no permitido',
        'El programa cuenta días donde la norma es de fechas pares o impares, o cayó un 31 de por medio.'
      ],
      ['No riega nada', 'Apagado, ajuste de lluvia o de temporada.']
    ],
    brief: {
      cautions: [],
      todo: ['Compare reloj y ajustes con la ficha de programa.'],
      seen: [
        'Otra hora: reloj, a.m. o p.m., horario de verano. Dos veces: segunda hora de inicio. Otro día: cuenta días.'
      ]
    }
  },
  flow: {
    title: 'La válvula abre, el caudal es débil',
    needs: 'contador de agua y reloj',
    why: 'Los hilos han cumplido: lo que queda es el agua.',
    todo: ['Haga funcionar la estación sola, cronometre el contador y compare el caudal con el normal.'],
    seen: [
      [
        'Menos de lo normal',
        'Filtro o emisores obstruidos, regulador de presión, control de caudal a medio cerrar o dos programadores abiertos a la vez en una toma pequeña.'
      ],
      ['Normal o más, pero las plantas están secas', 'Una fuga entre la válvula y los emisores.']
    ],
    brief: {
      cautions: [],
      todo: ['Haga funcionar la estación sola y cronometre el contador.'],
      seen: [
        'Bajo: filtro, emisores, regulador, control de caudal, dos programadores a la vez. Normal, pero seco: una fuga.'
      ]
    }
  }
} satisfies Record<string, StepWords>

export const faultWords = {
  lead: 'Busque el síntoma y recorra los pasos en su orden; deténgase en el que muestre la avería. Cada uno dice qué hacer, por qué y qué significan los signos.',
  first:
    'La ficha técnica y las lecturas de la recepción de este emplazamiento van antes que cualquier cifra general de aquí. Lea Primero, la seguridad antes de abrir una arqueta.',
  symptom: 'Síntoma',
  lookFirst: 'Mire primero',
  then: 'Después',
  symptoms: [
    [
      'No riega ninguna estación',
      'Batería en carga (2); reloj, apagado y ajuste de lluvia (7)',
      'Impulso en el programador; el hilo común (5)'
    ],
    [
      'Una estación no funciona',
      'Ohmios en el programador (5), después en la válvula (3)',
      'Empalmes, tipo de bobina, sección y longitud del hilo'
    ],
    [
      'Una válvula no cierra',
      'Ciérrela a mano o cierre la llave de corte (1); arenilla',
      'Batería en el impulso de cierre (2), polaridad (6), caudal mínimo de la válvula'
    ],
    [
      'Una válvula abre sola',
      'Polaridad (6), una segunda hora de inicio (7)',
      'Un hilo compartido por dos estaciones, daño por sobretensión'
    ],
    [
      'Funciona cerca, falla lejos',
      'Ohmios del bucle frente a la tabla (5)',
      'Sección del hilo, longitud, bobinas en paralelo'
    ],
    [
      'La batería se agota demasiado pronto',
      'Impulsos al día (7), fuga en un empalme húmedo (5)',
      'Tipo de pila equivocado (2), bobina en cortocircuito (3)'
    ],
    [
      'Lecturas raras solo después de llover',
      'Hilos a tierra (5), agua en la arqueta',
      'Rehaga el empalme, por encima de la grava'
    ],
    ['Riega, pero flojo', 'Caudal frente al normal (8)', 'Filtro, regulador, otras estaciones abiertas a la vez']
  ] satisfies readonly (readonly [string, string, string])[],
  symptomNote:
    'Los números entre paréntesis son los pasos de abajo. Orden de las comprobaciones: práctica común, sin fuente.',
  stepTitle: (number: number, title: string) => `${number} · ${title}`,
  why: (why: string, needs: string) => `Por qué: ${why}${needs ? ` Necesita: ${needs}.` : ''}`,
  briefCaution: (signal: string, text: string) => `${signal}: ${text}`,
  caution: (signal: string, hazard: string, instead: string) => `${signal}: ${hazard} ${instead}`,
  doLead: 'Haga',
  signs: 'Busque',
  signLine: (sign: string, means: string) => `${sign}: ${means.charAt(0).toLowerCase()}${means.slice(1)}`,
  steps,
  battery: {
    caption: 'Voltios de los juegos de este emplazamiento',
    set: 'Batería',
    newRest: 'Nueva, en reposo',
    change: 'Cambiar por debajo de, en carga',
    failed: 'Falla cerca de',
    controllers: 'Programadores',
    kindUnknown: 'tipo sin anotar',
    each: (kind: string) => `${kind}, cada una por separado`,
    range: (least: string, most: string) => `${least} a ${most} V`,
    below: (volts: string) => `unos ${volts} V`,
    noFigure: 'véase la ficha técnica',
    note: 'No se halló ninguna cifra publicada para lo que es de memoria; la ficha técnica va primero.',
    line: (set: string, newRest: string, change: string, failed: string) =>
      `${set}: nueva ${newRest} en reposo; cambiar por debajo de ${change} en carga${failed ? `; falla cerca de ${failed}` : ''} (de memoria; primero la ficha técnica).`,
    bySheet: (set: string, change: string, newRest: string, failed: string) => {
      const usual = [newRest && `nueva ${newRest} en reposo`, failed && `falla cerca de ${failed}`]
        .filter(Boolean)
        .join('; ')
      return `${set}: cambiar por debajo de ${change} en carga (ficha técnica)${usual ? `; ${usual} (de memoria)` : ''}.`
    },
    unknown: (set: string) => `${set}: tome de la ficha técnica los voltios a los que se cambia.`,
    pulse: (controllers: string, volts: string) =>
      `${controllers}: ${volts} en los bornes durante el impulso (ficha técnica).`
  },
  readings: {
    caption: 'Lo que debería marcar un multímetro en este emplazamiento',
    station: 'Estación',
    zone: 'Zona',
    wires: 'Solo los hilos',
    controller: 'En el programador',
    valve: 'En la válvula',
    band: 'Margen',
    flow: 'Caudal normal',
    range: (least: string, most: string) => `${least}\u00a0a\u00a0${most}`,
    around: (day: string) => `recepción ${day}`,
    bandNote: (cold: string, warm: string) =>
      `Margen: un 20 % a cada lado de la lectura de la recepción donde consta; si no, bobina un 20 % a cada lado y cobre de ${cold} a ${warm}. El 20 % es una regla de este proyecto.`,
    offNote: (names: string) =>
      `${names}: la lectura registrada se sale de lo que pueden dar bobina e hilo, así que el margen no la rodea. Mire esta primero.`,
    coilsNote: (names: string) => `${names}: los ohmios son de las bobinas juntas. Una sola mide más.`,
    none: 'No consta ninguna estación, así que no hay lecturas que esperar.',
    line: (band: string) => `${band} es bueno.`,
    unknown: (why: string) => `sin calcular, ${why}.`,
    off: 'Lectura de la recepción fuera de margen: mire aquí primero.'
  },
  threeLeads:
    'Tres hilos son dos devanados con un común. Mida del común a cada uno; los dos no tienen por qué ser iguales (de memoria).',
  programLine: (controllers: string, text: string) => `${controllers}: ${text}.`
}
