import type { kioskSheet as english } from '../en/kiosk-sheet.ts';

export const kioskSheet: typeof english = {
  title: 'Instalar el quiosco',
  lead: 'Una hoja para quien lo pone y para quien acude cuando se detiene. Conviene guardarla detrás de la pantalla.',
  print: 'Imprimir esta hoja',
  parts: {
    before: {
      heading: 'Antes de ponerlo',
      lines: [
        'Una computadora con pantalla táctil, un navegador de los últimos dos años y un chip de gráficos que dibuje WebGL. Sin él también funciona, con imágenes más lentas.',
        'Red para el primer arranque. Cuando la autoprueba dice «Sin red: bien», se puede desconectar; las versiones nuevas llegan cuando la hay.',
        'La dirección empieza con https://, o con http://localhost si la computadora misma sirve los archivos. Solo así el navegador puede guardar una copia.',
        'Abrir la dirección, luego la página de ajustes, y seguirla desde arriba: primero el tamaño verdadero.',
      ],
    },
    linux: {
      heading: 'Arranque en Linux',
      lines: [
        'Una cuenta propia, sin contraseña que escribir ni otros permisos, que entra sola.',
        'Su sesión arranca un solo programa: el navegador, en modo quiosco a pantalla completa, en la dirección con #/kiosk al final. Un servicio lo arranca de nuevo cuando termina.',
        'Apagados: protector de pantalla, avisos, reinicios automáticos de día, gestos táctiles del escritorio, combinaciones de teclas, la oferta de restaurar páginas tras una falla.',
        'Pantalla a reposo tras 15 minutos: la página la mantiene encendida en horario y la suelta después.',
      ],
    },
    windows: {
      heading: 'Arranque en Windows',
      lines: [
        'Una cuenta local aparte, sin permisos de administración, puesta en los ajustes del sistema para usar un solo programa: el navegador en modo quiosco a pantalla completa, en la misma dirección.',
        'Entrada automática a esa cuenta; actualizaciones y reinicios fuera de horario; gestos de borde, avisos y teclado táctil apagados.',
        'En el plan de energía: la computadora nunca en reposo, la pantalla tras 15 minutos.',
        'Permitir que el sitio guarde datos y suene. Prohibir otras direcciones, descargas e impresión en las reglas del navegador.',
      ],
    },
    launcher: {
      heading: 'El latido',
      lines: [
        'Cada 10 segundos la página renueva su título: {beat}. El mismo texto está en el atributo data-heartbeat del documento.',
        'La palabra antes de la hora es attract (espera), visit (visita), setup (ajustes) o resting, mientras espera para cargarse de nuevo.',
        'Un programa que vigila lee el título de la ventana, sin red. Si no cambió en 60 segundos: cerrar el navegador y arrancarlo otra vez. Si falla tres veces: reiniciar la computadora.',
      ],
    },
    reach: {
      heading: 'Altura y alcance',
      lines: [
        'Todas las teclas están en una franja junto al borde inferior de la pantalla. Hay que colgarla de modo que toda la franja quede al alcance de cada visita: entre 20 y 36 in donde vienen niños pequeños.',
        'Dejar enfrente un piso plano de 30 por 48 in, de frente o de lado, y bajo una mesa 27 in de alto libres para las rodillas.',
      ],
      drawing: 'El quiosco visto de frente con las alturas desde el piso que alcanzan las visitas.',
      keys: 'teclas',
      bars: { adult: 'adultos', nine: '9–12', five: '5–8', three: '3–4' },
      floor: 'piso',
      table: 'Alturas desde el piso, normas ADA de 2010',
      who: 'Quién',
      low: 'Desde',
      high: 'Hasta',
      source: 'Cláusula',
      rows: {
        adult: 'Adultos, de frente o de lado',
        deep: 'Sobre una repisa de 20 a 25 in de fondo',
        nine: 'Niños de 9 a 12',
        five: 'Niños de 5 a 8',
        three: 'Niños de 3 y 4',
      },
      memory: 'de memoria',
      inches: '{n} in',
      mm: 'mm',
      span: '{low} – {high}',
    },
    sound: {
      heading: 'Sonido',
      lines: [
        'Donde se para la visita, la bocina tiene que llegar al menos a 65 dB(A) (Sección 508, 402.3.2; EN 301 549, 5.1.3.12). Sonar el tono de la página de ajustes, sostener el medidor a la altura de una cabeza y ajustar el volumen del sistema.',
        'En una sala ruidosa es muy poco: 20 dB sobre la sala si esta pasa de 45 dB (una regla anterior, de 2000).',
        'Después de cada visita el volumen vuelve a lo ajustado.',
        'Las pantallas se leen con voces del aparato. En esta versión no hay grabaciones: si el aparato no tiene voz de un idioma, en ese idioma no se lee nada.',
      ],
    },
    power: {
      heading: 'Corriente',
      lines: [
        'En el firmware: arrancar cuando vuelva la corriente. Así un contacto con interruptor o un temporizador puede apagar todo de noche; antes hay que apagar la computadora.',
        'Un supresor de picos, ningún cable suelto al alcance y aire en las rejillas.',
      ],
    },
    cleaning: {
      heading: 'Limpieza',
      lines: [
        'Cada día: un paño suave sin pelusa, apenas húmedo con agua, con la pantalla a oscuras. Se moja el paño, nunca el vidrio.',
        'Para desinfectar, solo lo que permita el fabricante de la pantalla; nada de amoniaco, polvo ni papel. Dejar secar antes de abrir. Práctica común.',
      ],
    },
    trouble: {
      heading: 'Cuando falla',
      seen: 'Qué se ve',
      does: 'Qué hacer',
      rows: [
        {
          seen: 'Solo el edredón, del todo quieto',
          does: 'Hubo un error y se carga de nuevo tras 5, 30 y luego 120 segundos. Si sigue ahí a los diez minutos, reiniciar la computadora.',
        },
        {
          seen: 'Las imágenes quietas, lo demás funciona',
          does: 'Los gráficos fallaron varias veces seguidas. El arranque de la noche lo intenta otra vez; reiniciar la computadora lo hace ahora.',
        },
        {
          seen: 'Página en blanco, o un mensaje del navegador',
          does: 'No hay copia en el aparato ni red. Conectar la red y arrancar otra vez el navegador.',
        },
        {
          seen: 'Empieza como nuevo, con otros tamaños',
          does: 'El navegador borró su memoria. Abrir el archivo de ajustes en la página de ajustes y luego ver Memoria en la autoprueba.',
        },
        {
          seen: 'Los toques caen al lado del dedo',
          does: 'Calibrar la pantalla táctil en los ajustes del sistema y medir otra vez la barra de la página de ajustes.',
        },
        {
          seen: 'Teclas demasiado grandes o chicas',
          does: 'Se cambió el zoom del navegador o de la pantalla. Volver ambos al 100 por ciento, o medir otra vez la barra.',
        },
        {
          seen: 'No se lee nada en voz alta',
          does: 'Ver Voces en la autoprueba, el volumen del sistema y el cable de la bocina.',
        },
      ],
    },
    setup: {
      heading: 'A la página de ajustes',
      lines: [
        'Sostener la esquina superior izquierda cinco segundos, soltar y tocar las esquinas antes de quince segundos: superior derecha, inferior derecha, inferior izquierda, superior izquierda.',
        'O escribir la dirección con #/kiosk/setup al final. Si nadie la toca en diez minutos, vuelve al quiosco.',
      ],
    },
    weekly: {
      heading: 'Cada semana',
      lines: [
        'Autoprueba: leer las cinco líneas. Cuentas: guardar la tabla y empezar de nuevo. Guardar los ajustes después de cada cambio.',
        'Las cuentas son solo números: visitas, idiomas, estaciones y segundos. No se guarda nada de ninguna persona y nada sale del aparato.',
        'Una versión nueva llega sola con la red y entra cuando no hay nadie. Cada noche a las {time} la página se carga de nuevo.',
      ],
    },
  },
  here: {
    heading: 'Este quiosco',
    size: 'Píxel: {mm} mm',
    hours: 'Abre de {from} a {to}',
    phone: 'Teléfonos: {address}',
    noPhone: 'Teléfonos: sin código',
    blanks: ['Dirección:', 'Puesto el:', 'Preguntar por:', 'Teléfono:'],
  },
};
