import type { sheetGuide as english } from '../en/sheet-guide.ts';

export const sheetGuide: typeof english = {
  title: 'Para docentes',
  set: 'Hojas {from} a {to}; {level}; {units}',
  marking: 'Calificación',
  marks: [
    'Un punto por tomar del texto los números correctos.',
    'Uno por un desarrollo que se puede seguir, aunque falle una cuenta.',
    'Uno por la respuesta con su unidad.',
    'Uno por redondear como dice la hoja. Redondear a medio camino suele mover la última cifra: el punto del desarrollo se conserva.',
  ],
  carried: 'Un error se cuenta una vez: lo que sigue de él correctamente es correcto.',
  practice: 'Los puntos, y lo que suele fallar, son práctica común entre docentes, no un estudio.',
  materials: 'Qué tener a mano',
  always: ['Un lápiz por estudiante', 'Una calculadora por estudiante, o una para dos'],
  for: {
    heat: '',
    ginBalance: '',
    turnout: '',
    bales: '',
    staple: 'Longitud: la tarjeta de fibra con su regla y un copo de algodón',
    yarn: 'Hilo: un trozo de hilo para destorcer',
    clothWeight: 'Peso de la tela: un retazo y una báscula de cocina que marque gramos',
    conversions: 'Unidades: una cinta con pulgadas y centímetros',
    layout: 'Corte: papel para cortar en tiras, tijeras',
    trace: 'De vuelta a las bellotas: una bellota abierta o su imagen',
  },
  look: 'En qué fijarse',
  looks: {
    heat: {
      1: 'La máxima y la mínima se parten juntas a la mitad y la base se resta una vez. El error usual es partir solo la mínima; conviene preguntar qué temperatura queda en medio.',
      2: 'Un día frío vale 0 y no quita nada a los demás. Un total demasiado chico suele llevar un día bajo cero.',
      3: 'Los días se redondean hacia arriba: con un día menos la bellota aún no se abre. Hay que ver si el promedio conserva sus cifras al dividir.',
    },
    ginBalance: {
      1: 'Lo que falta tiene nombre: basura, borra y agua. Conviene preguntar dónde está ahora, para que nadie diga que se perdió.',
      2: 'El agua se halla restando, porque nadie la pesó. El porcentaje es de la carga, no de la fibra.',
      3: 'El agua entra con la carga, sale con el aire caliente y se devuelve en la prensa: tres signos, uno de ellos más. Lo usual es olvidar el último.',
    },
    turnout: {
      1: 'Fibra entre algodón en hueso, y no entre semilla. Un rendimiento de más de la mitad es señal para mirar otra vez.',
      2: 'La fibra es parte del módulo, así que debe ser menos. Las pacas salen de la fibra, no del módulo.',
      3: 'De la fibra al algodón en hueso se divide entre el rendimiento. Quien multiplica obtiene menos algodón en hueso que fibra: conviene preguntar si eso puede ser.',
    },
    bales: {
      1: 'Las pacas completas se cortan, no se redondean. Lo que sobra es lo que dejan las pacas completas, no los decimales de la división.',
      2: 'La diferencia puede estar bajo cero. Los centavos pasan a dólares al final; una paca que vale decenas de miles se quedó en centavos.',
      3: 'Una tonelada de semilla no es una paca de fibra: cada precio tiene su propio peso. Hay que decir en voz alta que los precios son de años distintos.',
    },
    staple: {
      1: 'Treinta y dos treintaidosavos son una pulgada; los códigos de más de 32 miden más. Un número menor que uno para uno de esos códigos se dividió al revés.',
      2: 'El código es la última línea que la longitud alcanza. El error usual es leer la línea más cercana.',
      3: 'La longitud se redondea primero a la centésima y luego se lee. Cerca de un límite el orden decide; conviene preguntar cuánto vale una centésima para la granja.',
    },
    yarn: {
      1: 'El número Ne dice cuánto largo hay en un peso; el tex, cuánto peso en un largo. Antes de la cuenta conviene preguntar cuál de dos hilos es más delgado.',
      2: 'Ne y tex van al revés uno del otro. Las fibras del hilo salen en decenas o centenas; si salen miles, se mezclaron tex y mtex.',
      3: 'El número más fino se corta hacia abajo: uno más y faltan fibras. Hay que ver si primero se halló el hilo más delgado.',
    },
    clothWeight: {
      1: 'Peso entre área, no área entre peso. Se compara con una tela en la mano: la de quilt anda por 4 oz/yd² o 130 g/m².',
      2: 'Una de las medidas está en otra unidad. Un área muchas veces mayor se quedó en pulgadas o centímetros.',
      3: 'Los hilos por pulgada pasan a hilos por yarda, y cada uno es más largo que la tela por su onda. Sin la onda la tela sale un poco ligera.',
    },
    conversions: {
      1: 'La rebaja se quita del primer precio, y el cien por ciento es el total. Conviene pedir antes una estimación.',
      2: 'Una yarda es más corta que un metro, así que el número de metros es menor. Un factor al revés se nota en un número del lado equivocado.',
      3: 'Para cortar más largo se divide entre lo que queda; sumar el mismo porcentaje se acerca pero no alcanza. La tela pesa más porque los mismos hilos ocupan menos área.',
    },
    layout: {
      1: 'Solo cuentan las tiras enteras. Las tiras van a lo largo del orillo, así que lo que se reparte es el ancho de la tela.',
      2: 'La misma área en tela más ancha es más corta. La tela se compra hasta el siguiente paso de la tienda, nunca hacia abajo.',
      3: 'Las tiras se redondean hacia arriba antes de hallar su largo. Conviene preguntar de qué modo sobra menos y si un estampado puede ir atravesado.',
    },
    trace: {
      1: 'El algodón en hueso es más que su fibra. Dividir entre el rendimiento da más; multiplicar, menos.',
      2: 'Las onzas pasan a gramos antes de llegar a la bellota, si la hoja va en unidades de EE. UU. Unos cientos de bellotas para varias prendas es el tamaño correcto.',
      3: 'Cada paso hacia atrás divide, y cada número crece. Hay que hallar el paso que más pierde y decir qué pasa con eso.',
    },
  },
};
