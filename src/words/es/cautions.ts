import type { CautionId } from '../../domain/safety/cautions.ts'
import type { CoverLocation } from '../../reference/nec-300-5.ts'
import type { CautionText } from '../en-US/cautions.ts'

const texts: Readonly<Record<CautionId, CautionText>> = {
  traffic: {
    title: 'Tráfico junto al trabajo',
    hazard: 'Los vehículos pasan al alcance de las arquetas y los conductores no esperan a nadie ahí.',
    consequence: 'Un vehículo que le golpee le causará la muerte o lesiones graves.',
    local: {
      US: [
        'Use ropa de alta visibilidad ANSI/ISEA 107 de clase 2 o 3.',
        'Consiga el plan de señalización y el número de permiso antes de la visita.'
      ],
      other: [
        'Use ropa de alta visibilidad de la clase que exija la autoridad de la vía.',
        'Consiga el permiso de la autoridad de la vía y su plan de señalización antes de la visita.'
      ]
    },
    avoidance: [
      'Haga que personal formado coloque las señales y los conos de ese plan; no improvise.',
      'Lleve a una segunda persona que vigile el tráfico.',
      'Estacione en el sentido de la marcha, fuera del carril, con el rotativo encendido.',
      'Póngase de cara al tráfico al arrodillarse y mantenga las herramientas dentro de los conos.',
      'Cruce a pie solo por donde el plan lo permita.'
    ],
    short: 'Pasa tráfico junto a esta arqueta.',
    instead: 'Quédese dentro de la zona señalizada y de cara al tráfico.',
    deference: 'Deciden la autoridad de la vía y las condiciones de su permiso.'
  },
  mains: {
    title: 'Tensión de red en un adaptador, una bomba o su relé',
    hazard:
      'Un adaptador, una bomba y un relé de arranque de bomba llevan tensión de red, aunque los hilos de las válvulas no la lleven.',
    consequence: 'Una parte en tensión que toque le causará la muerte o lesiones graves.',
    avoidance: [
      'Deje todo trabajo en la red a un electricista autorizado.',
      'Desconecte en el seccionador, bloquéelo y cuelgue en él su tarjeta.',
      'Compruebe la ausencia de tensión con un comprobador que pruebe antes y después en una fuente en tensión.',
      'Mantenga cerradas las tapas del adaptador, del relé y del cuadro de la bomba.',
      'Aléjese de las partes de red en una arqueta mojada o inundada y dé aviso.'
    ],
    short: 'Hay tensión de red en este programador.',
    instead: 'Mantenga cerradas las tapas y llame a un electricista autorizado.',
    deference: 'Deciden el reglamento eléctrico local y un electricista autorizado.'
  },
  'confined-space': {
    title: 'Un pozo o una cámara en los que cabe una persona',
    hazard:
      'En un pozo puede faltar oxígeno o haber gas, y puede subir el agua. Una arqueta en la que solo se mete el brazo no es un espacio así.',
    consequence: 'El aire viciado no avisa y causará la muerte de quien entre, y a menudo también la de quien acuda.',
    local: {
      US: [
        'Trate todo pozo al que entre como espacio con permiso obligatorio hasta que una persona cualificada diga otra cosa.',
        'Mida antes el aire: de 19.5 a 23.5 por ciento de oxígeno, gas inflamable a no más del 10 por ciento de su límite inferior.'
      ],
      other: ['Haga que una persona cualificada evalúe el pozo y mida su aire antes de que entre nadie.']
    },
    avoidance: [
      'Trabaje desde fuera con una llave larga siempre que se pueda.',
      'Mantenga la cabeza por encima del borde cuando solo meta el brazo.',
      'Tenga fuera a una persona formada que pueda sacarle sin entrar.',
      'Llame a los servicios de rescate y no entre detrás de nadie.'
    ],
    short: 'El aire de un pozo puede matar sin avisar.',
    instead: 'Trabaje desde fuera; no entre.',
    deference: 'Deciden el permiso de entrada y la autoridad local de seguridad.'
  },
  'fall-edge': {
    title: 'Caída desde la cubierta',
    hazard: 'El borde de la cubierta, un lucernario o una trampilla están a pocos pasos del trabajo.',
    consequence: 'Una caída desde la cubierta le causará la muerte o lesiones graves.',
    local: {
      US: [
        'Use barandilla, red o sistema anticaídas a menos de 6 ft (1.8 m) del borde.',
        'Delimite una zona señalada para trabajos breves y poco frecuentes entre 6 ft y 15 ft (4.6 m) del borde.',
        'Siga la norma de trabajo de la empresa más adentro.'
      ],
      other: [
        'Use barandilla o sistema anticaídas siempre que sea posible una caída.',
        'Pregunte a qué distancia del borde dejan trabajar sin ellos las normas locales.'
      ]
    },
    avoidance: [
      'Consiga el permiso de cubierta del propietario del edificio y el plano de anclajes antes de la visita.',
      'Engánchese solo a un anclaje con la revisión en vigor.',
      'Tape o cerque lucernarios y trampillas y no los pise.',
      'Ate herramientas y tapas de arqueta para que nada caiga sobre quien esté debajo.',
      'Abandone la cubierta con viento fuerte, hielo o truenos.'
    ],
    short: 'El borde de la cubierta está cerca.',
    instead: 'Engánchese o quédese bien lejos del borde.',
    deference: 'Deciden las normas locales contra caídas y el permiso del propietario del edificio.'
  },
  'buried-utilities': {
    title: 'Líneas de electricidad, gas y otras en el suelo',
    hazard: 'Por donde cave pueden cruzar líneas de electricidad, gas, agua y datos, a cualquier profundidad.',
    consequence: 'Una pala en una línea eléctrica o de gas podría matarle a usted o a quienes estén cerca.',
    local: {
      US: [
        'Llame al 811 antes de cavar; la ley de cada estado fija cuántos días hábiles antes.',
        'Cave a mano dentro de la distancia a la marca que fija el estado; muchos dicen 24 in (600 mm).'
      ],
      GB: ['Pida los planos a cada compañía y después localice sus líneas con un detector de cables.'],
      AU: ['Haga la consulta nacional previa a la excavación al menos dos días hábiles completos antes.'],
      NZ: ['Haga la consulta nacional previa a la excavación y espere los planos.'],
      other: ['Pida al servicio de consulta de redes del lugar que localice sus líneas; en Estados Unidos es el 811.']
    },
    avoidance: [
      'Marque la zona en blanco antes de que venga quien localiza.',
      'Espere a que hayan contestado todas las compañías.',
      'Localice usted las líneas privadas: nadie le marca los hilos de riego, alumbrado o puertas.',
      'Cave a mano cerca de una marca.',
      'Pare, aleje a la gente y llame a la compañía si encuentra una línea sin marcar.'
    ],
    short: 'Puede haber líneas de electricidad o gas cerca de esta arqueta.',
    instead: 'Haga localizar las redes antes de cavar, también a mano.',
    deference: 'Deciden los titulares de las redes y la ley local sobre excavaciones.'
  },
  trench: {
    title: 'Una zanja o un hoyo que se derrumba',
    hazard: 'La pared de una zanja o de un hoyo puede caer sin avisar.',
    consequence: 'La tierra que le caiga encima podría aplastarle o asfixiarle y causarle la muerte.',
    local: {
      US: [
        'Entibe, proteja o ataluce una zanja de 5 ft (1.52 m) o más, salvo que sea toda de roca estable.',
        'Haga lo mismo en una menos honda, salvo que una persona competente la haya examinado sin ver indicios de derrumbe.',
        'Ponga una escalera o rampa a menos de 25 ft (7.6 m) de cada persona en una zanja de 4 ft (1.22 m) o más.',
        'Mantenga la tierra y los equipos a 2 ft (0.6 m) o más del borde.',
        'Mida el aire por debajo de 4 ft (1.22 m) donde pueda ser malo.'
      ],
      other: [
        'Entibe, proteja o ataluce los lados salvo que una persona competente los encuentre seguros.',
        'Ponga una escalera cerca de todos los que trabajan bajo el nivel del suelo.',
        'Mantenga la tierra y los equipos apartados del borde.'
      ]
    },
    avoidance: [
      'Haga que una persona competente examine el terreno cada día, y de nuevo después de llover.',
      'No baje al hoyo si no hay nadie al lado.',
      'Cerque o tape el hoyo antes de dejarlo.'
    ],
    short: 'La pared de un hoyo hondo puede caer.',
    instead: 'No entre hasta que lo haya examinado una persona competente.',
    deference: 'Deciden una persona competente en el lugar y la autoridad local de seguridad.'
  },
  'blow-out': {
    title: 'Soplado de tuberías con aire comprimido',
    hazard: 'El aire a presión almacena mucha más energía que el agua, y una pieza puede reventar o salir despedida.',
    consequence: 'Una pieza lanzada por el aire podría dejarle ciego o matarle.',
    avoidance: [
      'Ponga el regulador no más alto que la pieza de menor presión nominal de la línea.',
      'Quédese por debajo de 50 psi (3.4 bar) en polietileno y de 80 psi (5.5 bar) en PVC rígido, por práctica común, sin fuente.',
      'Quédese cerca de 30 psi (2 bar) en goteo, por práctica común, sin fuente.',
      'Abra antes una válvula, para que el aire tenga siempre salida.',
      'No sople a través de un dispositivo antirreflujo, una bomba o un contador.',
      'Use protección ocular y aleje a todos de los emisores y de las arquetas abiertas.',
      'Pare cuando deje de salir agua: en seco las piezas se calientan.'
    ],
    short: 'El aire a presión puede lanzar piezas.',
    instead: 'Apártese, use protección ocular y mantenga bajo el regulador.',
    deference: 'Deciden las presiones marcadas en las piezas y un operador formado.'
  },
  'chemical-injection': {
    title: 'Abono o producto químico en el agua',
    hazard:
      'El depósito, el inyector y la tubería contienen producto concentrado, que puede retroceder hacia el agua potable.',
    consequence: 'El concentrado podría lesionar gravemente sus ojos y su piel, y envenenar a quien beba de la red.',
    avoidance: [
      'Lea la etiqueta y la ficha de datos de seguridad antes de abrir nada.',
      'Use los guantes y la protección ocular que indica la etiqueta.',
      'Pare el inyector y alivie su presión antes de abrir la tubería.',
      'Compruebe que hay un dispositivo antirreflujo para riesgo alto y que su ensayo está en vigor.',
      'No beba de ninguna salida posterior al inyector y señale cada una.',
      'Mantenga fuera a la gente tanto tiempo como diga la etiqueta.'
    ],
    short: 'El agua puede llevar aquí abono o producto químico.',
    instead: 'Pare antes el inyector y use guantes y protección ocular.',
    deference:
      'Deciden la etiqueta del producto, el suministrador del agua y un técnico certificado en dispositivos antirreflujo.'
  },
  backflow: {
    title: 'Agua de riego que vuelve al agua potable',
    hazard: 'Cuando baja la presión de la red, puede aspirar tierra, abono y agua estancada.',
    consequence: 'Quienes beban esa agua podrían enfermar gravemente.',
    avoidance: [
      'Deje en servicio el dispositivo antirreflujo: no lo puentee, cierre ni retire.',
      'Hágalo ensayar por un técnico certificado al montarlo, trasladarlo o repararlo, y con la periodicidad del emplazamiento.',
      'Archive cada informe de ensayo en esta carpeta, con número de serie, fecha y nombre de quien ensayó.',
      'Dé aviso de un dispositivo que pierda, falte o tenga vencido el ensayo.',
      'Protéjalo de la helada y vacíelo para el invierno.'
    ],
    short: 'El agua sucia puede volver a la red de agua potable.',
    instead: 'Deje en servicio el dispositivo antirreflujo.',
    deference: 'Deciden el suministrador del agua y un técnico certificado en dispositivos antirreflujo.'
  },
  lightning: {
    title: 'Rayos',
    hazard: 'Los cables de campo, las tuberías y las vallas llevan un rayo muy lejos, y el terreno abierto lo atrae.',
    consequence: 'Un rayo, aunque caiga lejos a lo largo del cable, podría matarle.',
    avoidance: [
      'Pare con el primer trueno y entre en un edificio o en un vehículo cerrado.',
      'Espere 30 minutos después del último trueno.',
      'Apártese de cables, tuberías y vallas, y deje los empalmes hasta que pase la tormenta.'
    ],
    short: 'Los cables de campo llevan el rayo muy lejos.',
    instead: 'Pare con el primer trueno y espere 30 minutos después del último.',
    deference: 'Decide la norma de la empresa para el mal tiempo.'
  },
  heat: {
    title: 'Calor',
    hazard:
      'El sol, las cubiertas, el pavimento y el cristal calientan el cuerpo más deprisa de lo que puede enfriarse.',
    consequence: 'Un golpe de calor podría causar la muerte en pocas horas.',
    avoidance: [
      'Beba un vaso de agua cada 15 a 20 minutos, y no más de seis vasos por hora.',
      'Descanse a la sombra, y más a menudo a medida que apriete el calor.',
      'Dé a quien empieza el 20 por ciento de una jornada el primer día, y vaya aumentando.',
      'Vigílense entre ustedes: confusión, calambres y piel caliente y seca.',
      'Llame al número de emergencias y enfríe enseguida con agua y sombra a quien esté confuso.'
    ],
    short: 'El calor puede con usted mientras trabaja.',
    instead: 'Beba a menudo y descanse a la sombra.',
    deference: 'Deciden el plan de calor de la empresa y las normas laborales locales.'
  },
  'reclaimed-water': {
    title: 'Agua regenerada: no beber',
    hazard: 'El agua es regenerada, no es potable y puede llevar gérmenes.',
    consequence: 'El agua que trague, o que entre en un corte o en un ojo, podría enfermarle.',
    avoidance: [
      'No la beba, no se lave con ella ni llene de ella una botella.',
      'Use guantes, y protección ocular donde salpique.',
      'Lávese las manos con agua limpia antes de comer, beber o fumar.',
      'Evite que el riego y la escorrentía alcancen a personas, viviendas y lugares donde se come.',
      'Mantenga en su sitio y legibles los carteles y las marcas moradas.',
      'No una estas tuberías a las de agua potable, ni siquiera para una prueba.'
    ],
    short: 'Agua regenerada: no beber.',
    instead: 'Use guantes y lávese antes de comer o beber.',
    deference: 'Deciden la autorización del agua regenerada y la autoridad sanitaria local.'
  },
  'box-animals': {
    title: 'Lo que vive en las arquetas',
    hazard: 'En las arquetas hay arañas, avispas, hormigas, serpientes, vidrios rotos y puntas de hilo cortantes.',
    consequence: 'Una mordedura, una picadura o un corte podrían lesionarle y requerir atención médica.',
    avoidance: [
      'Levante la tapa por el borde más alejado con una herramienta, de modo que quede entre usted y la arqueta.',
      'Mire dentro con una luz antes de meter la mano.',
      'Use guantes gruesos, con los puños por encima de las mangas.',
      'No toque un nido ni una serpiente, cierre la tapa y dé aviso.',
      'Busque atención médica por una mordedura o por cualquier hinchazón lejos de una picadura.'
    ],
    short: 'Dentro puede haber arañas, avispas, serpientes, vidrios o puntas de hilo.',
    instead: 'Mire antes con una luz y use guantes.',
    deference: 'Deciden los consejos de primeros auxilios y las normas locales sobre plagas.'
  },
  'stored-pressure': {
    title: 'Presión que se suelta a mano',
    hazard: 'Un tornillo de purga, un solenoide flojo o una tapa de válvula levantada sueltan agua a presión.',
    consequence: 'Un chorro o una pieza suelta podrían golpearle, cortarle o lesionarle un ojo.',
    avoidance: [
      'Cierre la llave de corte y alivie la presión aguas abajo antes de desmontar una válvula.',
      'Gire despacio una purga o un solenoide, un cuarto de vuelta cada vez.',
      'Ponga la cara a un lado y use protección ocular.',
      'Ciérrelo de nuevo a mano y vea que el agua se detiene.'
    ],
    short: 'Una válvula que se abre a mano suelta agua a presión.',
    instead: 'Gírela despacio, con la cara a un lado.',
    deference: 'Deciden las instrucciones de la propia válvula y una persona cualificada.'
  },
  lids: {
    title: 'Tapas pesadas y arquetas abiertas',
    hazard: 'Una tapa pesa y resbala, y una arqueta abierta es un hoyo en el que se mete el pie.',
    consequence: 'Una tapa podría aplastarle un dedo o lesionarle la espalda, y un paso en falso torcerle un tobillo.',
    avoidance: [
      'Levante con un gancho para tapas, con las rodillas dobladas y los dedos fuera de la ranura.',
      'Levante entre dos una tapa grande.',
      'Deje la tapa plana y apartada del borde.',
      'Quédese junto a una arqueta abierta o protéjala.',
      'Asiente la tapa a ras, ciérrela y dé aviso si está rajada.'
    ],
    short: 'La tapa pesa y la arqueta abierta es un hoyo.',
    instead: 'Use un gancho para tapas y quédese junto a la arqueta abierta.',
    deference: 'Deciden las normas locales sobre cargas y el propietario del terreno.'
  },
  'battery-handling': {
    title: 'Manejo de baterías',
    hazard: 'Una pila en cortocircuito, mezclada o al revés se calienta, y una gastada suelta líquido cáustico.',
    consequence: 'Una pila caliente o su líquido podrían quemar la piel o irritar un ojo.',
    avoidance: [
      'Cambie a la vez todas las pilas de un programador, por nuevas de un solo tipo y marca.',
      'Haga coincidir más y menos con las marcas.',
      'Guarde las pilas de repuesto en su envase, lejos de llaves, herramientas y monedas.',
      'No recargue, abra ni aplaste una pila no recargable, ni la eche al fuego.',
      'Quite las pilas gastadas, y todas las de un programador que vaya a estar parado mucho tiempo.',
      'Use guantes con una pila que pierda y lave piel u ojos con agua abundante.'
    ],
    short: 'Las pilas en cortocircuito o que pierden queman.',
    instead: 'Haga coincidir más y menos, y use guantes con una pila que pierda.',
    deference: 'Deciden las marcas de la batería y la ficha técnica del programador.'
  },
  'valve-stays-open': {
    title: 'Una válvula de enclavamiento queda abierta cuando se agota la batería',
    hazard:
      'Una válvula de enclavamiento (latching) no necesita energía para seguir como está. Un impulso débil puede abrirla y después no lograr cerrarla.',
    consequence:
      'El agua corre hasta que alguien la corta: arriates inundados, tierra arrastrada y una factura de agua alta.',
    avoidance: [
      'Cambie las baterías en su fecha, antes de que estén débiles.',
      'Vea abrir y cerrar cada válvula después de cada cambio.',
      'Cierre a mano una válvula atascada, o cierre la llave de corte.',
      'Vea parado el contador antes de irse.',
      'No confíe en que un programador cierre sus válvulas cuando se agota la batería.'
    ],
    short: 'Una batería agotada deja abierta una válvula abierta.',
    instead: 'Ciérrela a mano o cierre la llave de corte.',
    deference: 'La ficha técnica del programador decide cómo actúa con una batería débil.'
  },
  'ac-on-latching': {
    title: 'Bobinas de enclavamiento de CC y 24 V CA',
    hazard:
      'Una bobina de enclavamiento de CC está hecha para un impulso de milésimas de segundo, no para corriente continuada.',
    consequence: 'Los 24 V CA continuados, o una batería mantenida, recalientan la bobina y la estropean.',
    avoidance: [
      'Conecte estas bobinas solo a un programador que dé impulsos de CC.',
      'Lea la marca de una bobina antes de montarla: los ohmios por sí solos no distinguen los tipos.',
      'Pruebe una bobina con un toque de su batería nominal, no más largo que un impulso.',
      'No conecte un transformador al par, ni siquiera un momento.'
    ],
    short: 'Bobinas de enclavamiento de CC: 24 V CA las estropea.',
    instead: 'Conéctelas solo a un programador que dé impulsos de CC.',
    deference: 'Deciden las fichas técnicas de la bobina y del programador.'
  },
  polarity: {
    title: 'Polaridad invertida',
    hazard: 'Con sus dos hilos cambiados, una válvula cierra con el impulso de apertura y abre con el de cierre.',
    consequence: 'La válvula está abierta a todas horas menos en las de su programa, y el agua corre toda la noche.',
    avoidance: [
      'Vea abrir y cerrar cada válvula con presión después de cualquier trabajo en sus hilos.',
      'Cambie los dos hilos en el empalme donde una válvula actúe al revés y véala actuar dos veces.',
      'Haga coincidir la polaridad donde dos bobinas cuelguen de una salida.',
      'Anote qué color va a cada hilo.'
    ],
    short: 'Con los hilos cambiados una válvula actúa al revés.',
    instead: 'Vea abrir y cerrar la válvula antes de irse.',
    deference: 'Deciden las fichas técnicas de la bobina y del programador.'
  },
  'cable-cover': {
    title: 'Cable de control en el suelo',
    hazard: 'Palas, aireadores y perfiladoras alcanzan un cable demasiado somero.',
    consequence:
      'Un cable cortado deja su válvula como está, abierta o cerrada, y uno mellado se corroe hasta que falla.',
    avoidance: [
      'Mida la profundidad desde lo alto del cable hasta la rasante acabada.',
      'Tienda el cable a no menos que la tabla de profundidad mínima para el lugar.',
      'Localice el cable antes de cavar, airear o perfilar.',
      'Haga los empalmes en una arqueta, con conectores certificados para lugares húmedos.',
      'Anote la profundidad en cada cruce de un camino o una calzada.'
    ],
    short: 'El cable de control puede estar a una palada de profundidad.',
    instead: 'Localícelo antes de cavar.',
    deference: 'El reglamento eléctrico local, la autoridad de la vía y el permiso van antes que la tabla.'
  },
  'battery-disposal': {
    title: 'Qué hacer con las baterías gastadas',
    hazard: 'Las pilas gastadas son residuo separado en muchos lugares, y residuo peligroso en algunos.',
    consequence: 'Las pilas en la basura incumplen las normas de residuos de muchos lugares y contaminan el suelo.',
    local: {
      US: [
        'Pregunte al estado y al condado: California trata toda batería desechada como residuo peligroso y prohíbe echarla a la basura.'
      ],
      GB: ['Entréguelas en un punto de recogida de pilas y no las eche a la basura general.'],
      EU: ['Entréguelas por separado, como pide la ley de la Unión a quien las usó.'],
      other: ['Pregunte a la autoridad local dónde recoge las pilas gastadas.']
    },
    avoidance: [
      'Llévese del lugar todas las pilas gastadas el mismo día.',
      'Tape con cinta los bornes de las de 9 V y de litio, y meta cada una en una bolsa.',
      'Guarde las pilas gastadas aparte de las nuevas y del metal.'
    ],
    short: 'Las baterías gastadas no son basura.',
    instead: 'Lléveselas a un punto de recogida.',
    deference: 'Deciden las normas de residuos del estado o de la autoridad local.'
  }
}

/** Words of the cautions: their sentences, and what binds them to a site. */
export const cautionWords = {
  texts,
  /** The signal words, by the name that the cards of the cautions give them. */
  signals: { DANGER: 'PELIGRO', WARNING: 'ADVERTENCIA', CAUTION: 'PRECAUCIÓN', NOTICE: 'AVISO' },
  /** How a source is known, after its name. The name itself stays as it was published. */
  sources: {
    'Product sheet as submitted for the site': 'Ficha técnica presentada para el emplazamiento',
    'The site file': 'El archivo del emplazamiento',
    'common practice, no source': 'práctica común, sin fuente',
    'rule of this project': 'regla de este proyecto',
    'from memory': 'de memoria',
    'read in a copy': 'leído en una copia'
  },
  /** Ends the deference of every caution. */
  closing: 'Las normas locales y la autoridad competente van primero.',
  editionExample: (cited: string) => `${cited}. Normas de EE. UU. como ejemplo: consulte el equivalente local.`,
  edition: (cited: string) => `${cited.charAt(0).toUpperCase()}${cited.slice(1)}.`,
  steps: {
    closureHours: (hours: string) => `Trabaje solo en las horas de corte indicadas, ${hours}.`,
    trafficPlan: (plan: string) => `Siga el plan de señalización o permiso ${plan}.`,
    parapet: (height: string, guard: string) =>
      `No tome por protección el peto de ${height}: una barandilla mide al menos ${guard}.`,
    guard: '39 in (0.99 m)',
    anchors: (names: string) => `Engánchese a los anclajes que nombra el archivo del emplazamiento: ${names}.`,
    isolation: (where: string) => `Desconecte la red aquí: ${where}.`,
    airPressure: (pressure: string) =>
      `Ponga el regulador a no más de ${pressure}, la presión nominal de la pieza más débil.`
  },
  hazardLine: {
    road: 'TRÁFICO: quédese dentro de la zona señalizada.',
    roof: 'BORDE DE CUBIERTA: engánchese o quédese bien adentro.',
    reclaimed: 'AGUA REGENERADA: no beber.'
  },
  box: {
    noted: (hazards: string) => `Anotado en esta arqueta: ${hazards}.`
  },
  reasons: {
    caption: 'Por qué figura aquí cada indicación',
    caution: 'Indicación',
    because: 'Porque',
    graded: (cited: string) => `Las palabras de advertencia se gradúan según ${cited}.`
  },
  cover: {
    caption: 'Profundidad mínima del cable de control de riego de 30 V o menos',
    where: 'Por dónde va el cable',
    cover: 'Profundidad',
    orInRaceway: (direct: string, raceway: string) => `${direct} directo, ${raceway} en conducto`,
    locations: {
      'open ground': 'Plantación, césped y otro terreno abierto',
      'trench under 2 in concrete': 'Zanja bajo 2 in (50 mm) de hormigón',
      'under a building': 'Bajo un edificio, en conducto',
      'under a 4 in slab without vehicles': 'Bajo una losa de 4 in (100 mm) sin vehículos',
      'street, road, driveway or parking lot': 'Calle, carretera, callejón, acceso o aparcamiento',
      'one- or two-family driveway': 'Acceso a una vivienda de una o dos familias',
      'airport runway': 'Pista de aeropuerto y sus márgenes'
    } satisfies Record<CoverLocation, string>,
    edition: (cited: string) => `De ${cited}. Columna 5.`,
    first: 'El reglamento eléctrico local, la autoridad de la vía y el permiso van primero, y pueden pedir más.',
    toTheTop:
      'La profundidad se cuenta desde lo alto del cable hasta la rasante acabada, así que la zanja es más honda.',
    limit: 'La columna termina en 30 V; por encima rige otra columna.',
    floor: 'Palas y aireadores llegan a 6 in (150 mm): tiéndalo más hondo donde pueda (práctica común, sin fuente).',
    example: 'Es un código de los Estados Unidos y figura aquí como ejemplo: consulte el equivalente local.'
  }
}
