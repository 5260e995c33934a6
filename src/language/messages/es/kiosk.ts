import type { kiosk as english } from '../en/kiosk.ts';

/** The words of the kiosk. */
export const kiosk: typeof english = {
  attract: {
    touch: 'Tocar para coser',
    boll: { head: 'Una bellota', tail: 'un retazo', line: 'De unas {size} por lado. ¿Dónde quedó lo demás?' },
    today: 'Hoy en esta granja',
    gin: { head: 'Casi todo es semilla', line: 'Una sierra saca {lintOf} de fibra de cada {seedOf} de semilla.' },
    quilt: { head: 'Doce bloques', line: 'Campo, despepite, hilandería y mesa. Una temporada en dos minutos.' },
    own: 'En esta despepitadora',
    days: {
      planting: 'Las plantitas echan raíces.',
      bloom: 'Las flores abren blancas y cierran rosadas.',
      boll: 'Las bellotas crecen y cada semilla echa fibra.',
      harvest: 'Es tiempo de cosecha.',
      module: 'El algodón cosechado espera en el módulo.',
      gin: 'La despepitadora separa fibra y semilla.',
      mill: 'La hilandería hila la fibra del verano.',
      sewing: 'La tela está en la mesa de costura.',
      seed: 'Se encarga la semilla para la primavera.',
    },
  },
  language: { head: 'Empieza una temporada', ask: '¿En qué idioma?' },
  keys: {
    home: 'Inicio',
    back: 'Atrás',
    next: 'Seguir',
    lint: 'La fibra',
    seed: 'La semilla',
    explore: 'Las doce',
    compare: 'Comparar',
    lesson: 'Saber',
    listen: 'Escuchar',
    hush: 'Parar',
    softer: 'Más bajo',
    louder: 'Más alto',
    more: 'Más tiempo',
  },
  band: 'Controles',
  stopOf: 'Parada {number} de {all}',
  warning: { head: '¿Sigue alguien aquí?', line: 'Vuelve a empezar en {seconds} s. Tocar la pantalla para seguir.' },
  stops: {
    boll: {
      head: 'Una bellota',
      text: 'Lleva {seeds} semillas. En cada una crecieron unas {fibers} fibras: pelos blancos de una sola célula.',
    },
    harvest: {
      head: 'Fuera de la planta',
      text: 'Cada acre dio aquí {mass}: fibra, semilla, hoja y agua en una sola carga.',
    },
    ginning: {
      head: '¿Qué pesa más?',
      text: 'La sierra separa la fibra de la semilla. Con la respuesta se abren las bandas.',
    },
    seed: { head: 'La semilla', text: 'Junto a cada paca de fibra quedan {seed} de semilla. Será aceite y alimento.' },
    lint: { head: 'La fibra', text: 'Junto a cada paca de fibra quedan {seed} de semilla. Será aceite y alimento.' },
    pressing: {
      head: 'Una paca',
      text: 'La fibra de {bolls} bellotas, prensada hasta pasar por una puerta. Este campo dio {bales} pacas.',
    },
    spinning: {
      head: 'Solo la torsión la une',
      text: '{fibers} fibras van lado a lado en este hilo. De una bellota salen {yards}.',
    },
    sewing: {
      head: 'Una bellota, un retazo',
      text: 'Tanto blanco dio esto: {size} por lado. Cabe una mano encima: es el tamaño real.',
    },
    sewingHalf: {
      head: 'Una bellota, un retazo',
      text: 'Tanto blanco dio esto: {size} por lado, dibujado aquí a la mitad.',
    },
  },
  keepsake: {
    head: 'Un bloque de recuerdo',
    text: 'De esta temporada: {station}. La granja es inventada.',
    phone: 'El código abre la temporada en un teléfono.',
  },
  noCrop: 'sin cosecha',
  stations: {
    planting: {
      say: 'De 100 semillas sembradas nacieron {n} plantas.',
      counted: 'Plantas de 100 semillas',
      choices: ['A su tiempo', 'Cuatro semanas antes'],
      lesson:
        'La semilla de algodón pide calor más que agua. En tierra fría espera y puede pudrirse; en tierra tibia nace en una o dos semanas. Por eso se prefiere sembrar tarde que dos veces.',
    },
    bloom: {
      say: '{n} de las flores cayó sin dar bellota.',
      counted: 'Flores que cayeron',
      choices: ['Solo lluvia', 'Lluvia y riego'],
      lesson:
        'La flor del algodón abre blanca por la mañana y al otro día es rosada. Luego cae y deja una bellota, o nada. La planta guarda lo que sus hojas y raíces alimentan.',
    },
    boll: {
      say: 'De la primera flor a la primera bellota abierta: {n}.',
      counted: 'De flor a bellota abierta',
      choices: ['Semilla Upland', 'Semilla Pima'],
      lesson:
        'Primero la fibra crece a lo largo: una sola célula, fina como tela de araña. Luego llena su pared de celulosa, capa por capa. Al abrir la bellota se seca y se tuerce como una cinta.',
    },
    harvest: {
      say: '{n} del algodón abierto quedó en el campo.',
      counted: 'Quedó en el campo',
      choices: ['Cosechadora de husillos', 'Arrancadora'],
      lesson:
        'Los husillos mojados sacan la fibra de las bellotas abiertas y dejan la planta en pie. La arrancadora se lleva todo: bellotas, cáscaras y palos. Cuesta menos y deja más por limpiar.',
    },
    module: {
      say: 'Por dentro, el algodón guardado llegó a {n}.',
      counted: 'Lo más caliente',
      choices: ['Cosechado seco', 'Cosechado húmedo'],
      lesson:
        'El algodón cosechado se compacta como un pan y espera su turno. Seco, aguanta semanas. Húmedo, se calienta solo como el heno, y la fibra se pone amarilla.',
    },
    cleaning: {
      say: 'Salió {n} de la hoja, los palos y la tierra.',
      counted: 'Basura que salió',
      choices: ['Sin limpiadores', 'Todos los limpiadores'],
      lesson:
        'Antes de las sierras el algodón se seca y se sacude sobre mallas. Caen hojas, palos y tierra. Seco suelta más, pero la fibra seca se rompe más. Se busca el punto medio.',
    },
    ginning: {
      say: '{n} de la carga era semilla, en peso.',
      counted: 'Fibra de la carga',
      choices: ['Sin limpiador', 'Tres seguidos'],
      lesson:
        'Los dientes pasan la fibra entre costillas donde no cabe la semilla. La fibra va a la paca, la semilla al aceite, y un poco de semilla vuelve al campo.',
    },
    pressing: {
      say: 'Este campo dio {n} pacas.',
      counted: 'Pacas hechas',
      choices: ['Pacas ligeras', 'Pacas pesadas'],
      lesson:
        'La fibra suelta llenaría un cuarto. La prensa la vuelve una paca, y un camión lleva docenas. Cada paca tiene su etiqueta, para seguir su algodón hasta la hilandería.',
    },
    classing: {
      say: 'Casi todas las pacas miden {n} de pulgada.',
      counted: 'Longitud en pulgadas',
      choices: ['Semilla de fibra corta', 'Semilla de fibra larga'],
      lesson:
        'De cada paca se mide un puñado: qué tan largo, fuerte, fino y blanco. Casi nadie ve la paca al comprarla, solo sus números. De una fibra más larga sale un hilo más fino.',
    },
    spinning: {
      say: '{n} fibras van lado a lado en este hilo.',
      counted: 'Fibras lado a lado',
      choices: ['Este hilo', 'Un hilo más grueso'],
      lesson:
        'La fibra es corta, el hilo es largo. La torsión aprieta las fibras hasta que ninguna resbala. La fibra larga pide menos torsión y da un hilo más suave. Cada pelo es una punta.',
    },
    weaving: {
      say: 'El acabado acortó esta tela {n}.',
      counted: 'Acortado por el acabado',
      choices: ['Del telar', 'Blanqueada'],
      lesson:
        'En el telar los hilos van tensos. En el primer baño caliente se juntan y la tela se acorta. Nada se pierde. Lo que encogió en la fábrica no encoge otra vez en la colcha.',
    },
    sewing: {
      say: 'Una bellota dio un retazo de {n} por lado.',
      counted: 'Retazo de una bellota',
      choices: ['Esta tela', 'Un tejido más abierto'],
      lesson:
        'Una mano cabe sobre el algodón de una bellota. Solo el frente de una colcha lleva cientos de bellotas, y el relleno más. Cada una creció semanas en una planta, para un retazo.',
    },
  },
};
