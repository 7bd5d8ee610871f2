/** What each rule says should hold, in Spanish, by the rule's id; a rule without an entry is printed in English. */
export const ruleSummariesEs: Readonly<Record<string, string>> = {
  'away-from-heat-sources':
    'El aparato guarda distancia de conductos de calor, escape y otras partes calientes (100 mm, o lo que dice su ficha).',
  'battery-rests-charged': 'La batería reposa a 12,4 V (24,8 V) o más, antes y después del trabajo.',
  'bend-radius-is-wide-enough': 'Ninguna curva es más cerrada que diez veces el diámetro del mazo.',
  'charging-volts-are-normal': 'Con el motor en marcha (o listo) la batería se carga, antes y después del trabajo.',
  'clear-of-air-bags': 'El aparato y su mazo están fuera del recorrido de todo airbag.',
  'clear-of-head-strike-areas': 'El aparato no está donde golpean la cabeza o las rodillas en un choque.',
  'constant-is-proven': 'El cable unido a la alimentación está demostrado como positivo permanente (30).',
  'device-fuse-opens-first': 'El fusible del aparato no es mayor que el fusible del vehículo que lo precede.',
  'device-is-active': 'El aparato está activo antes de que se marche el instalador.',
  'device-is-firm': 'El aparato está firme y no puede soltarse con las sacudidas.',
  'device-lamp-as-the-profile-says': 'El testigo del aparato muestra lo que dice su ficha cuando todo va bien.',
  'device-not-in-another-vehicle': 'El aparato no consta ya en otro vehículo.',
  'device-window-covers-a-supply-code':
    'La tensión que pide el aparato cubre uno de los márgenes normalizados del sistema del vehículo.',
  'distance-from-people':
    'Un aparato que emite está al menos a 200 mm de las personas, o a la distancia que dice su ficha.',
  'does-not-block-view-vents-or-controls':
    'El aparato no tapa vista, salida de aire, mando, recorrido de asiento ni compuerta.',
  'dry-or-sealed': 'El aparato está en seco o es estanco.',
  'every-fastener-is-back': 'Cada fijación que se quitó está de nuevo en su sitio.',
  'fixing-points-suffice': 'El aparato se sujeta en dos puntos o más, o como dice su ficha.',
  'functions-work-again': 'Todo lo que funcionaba antes del trabajo funciona después.',
  'fuse-bears-the-load': 'El aparato consume a la larga como mucho el 80 % de su fusible.',
  'fuse-is-near-the-tap': 'Hay un fusible a menos de 178 mm (7 pulg.) de la unión.',
  'fuse-is-taped-and-tied':
    'Cada portafusibles está cerrado con cinta y atado, de modo que no se saca sin herramienta.',
  'fuse-suits-the-wire': 'El fusible no es mayor de lo que admite su cable ni de lo que pide el aparato.',
  'ground-drop-is-small': 'La masa cae como mucho 0,1 V con carga.',
  'ground-is-on-bare-metal': 'La masa está sobre metal limpio, sujeta de modo que no se afloja con las sacudidas.',
  'ground-is-proven': 'El cable unido a la masa está demostrado como masa (31).',
  'harness-has-slack': 'El mazo tiene algo de holgura: ni tirante ni colgando.',
  'harness-is-clear-of-edges-heat-and-moving-parts':
    'El mazo no toca cantos vivos, partes calientes, partes móviles ni tubos de combustible.',
  'harness-is-loomed': 'El mazo va en tubo o funda.',
  'harness-is-tied-at-intervals': 'El mazo va atado al menos cada 305 mm y apoyado al menos cada 610 mm.',
  'iccid-is-plausible': 'El número de la tarjeta (ICCID) empieza por 89 y tiene su dígito de control.',
  'ignition-holds-through-crank':
    'El cable de encendido se mantiene durante el arranque por encima de lo que el aparato toma por encendido.',
  'ignition-is-proven': 'El cable unido al encendido está demostrado como encendido (15).',
  'imei-is-plausible': 'El IMEI tiene 15 cifras y su dígito de control.',
  'isolator-side-is-recorded':
    'En un vehículo con desconectador de batería consta de qué lado se tomó la alimentación.',
  'joint-held-a-tug': 'Cada unión aguantó un tirón ligero con la mano.',
  'key-out-wait-is-long-enough':
    'La lectura sin llave al nivel de la batería se tomó al menos diez minutos después de quitarla.',
  'lead-carries-the-load': 'El cable más delgado de la alimentación lleva la corriente del aparato sin calentarse.',
  'lead-is-no-smaller-than-device-lead': 'Un cable que alarga o sustituye al del aparato no es más delgado que él.',
  'loaded-reading-taken': 'La alimentación se leyó de nuevo con carga después de conectar.',
  'method-suits-a-wet-place': 'Donde llega agua, sal o lavado, la unión es estanca.',
  'nicked-strands-max': 'Al pelar no se marcan más hilos de los que permite la tabla.',
  'no-fact-is-left-open': 'Está anotado aquello en que se apoyan las reglas: uniones, masa, mazo y lugar.',
  'no-insulation-displacing-tap-on-supply-lead':
    'Ninguna derivación que muerde el aislante está en un cable del aparato.',
  'no-over-voltage': 'Ninguna lectura pasa de lo que da un sistema de carga sano.',
  'no-supply-from-half-a-battery-pair': 'En 24 V no se toma nada del punto medio de la pareja de baterías.',
  'no-tap-on-data-wire': 'Nada está unido a un par de datos ni a un cable de señal.',
  'no-tap-on-high-voltage-wiring': 'Nada está unido al cableado de alta tensión (funda naranja).',
  'no-tap-on-restraint-wiring': 'Nada está unido al cableado del sistema de retención (funda amarilla).',
  'no-twist-only-joint': 'Ninguna unión se sostiene solo por retorcido.',
  'not-within-casual-reach': 'El aparato no está al alcance de cualquier mano.',
  'nothing-tied-to-steering-brake-or-restraint-parts':
    'Nada está atado a dirección, pedales, tubos de freno o combustible, cableado de retención ni cable de alta tensión.',
  'odometer-not-below-earlier': 'El odómetro no marca menos que en una visita anterior.',
  'orientation-as-the-profile-says': 'El aparato está orientado como dice su ficha.',
  'photographs-are-present': 'Existe cada fotografía que el registro nombra.',
  'photographs-asked-for-are-present': 'Se tomó cada fotografía que pide quien paga.',
  'photographs-where-a-rule-asks':
    'Lo que puede discutirse después está en una fotografía: un aparato en el parabrisas, hilos dañados, un taladro.',
  'plastics-not-over-tightened': 'Las fijaciones de los plásticos se aprietan a mano o con par, no a máquina.',
  'purchase-order-where-the-payer-needs-one': 'Consta la orden de compra cuando quien paga la pide.',
  'reachable-for-service': 'Se llega al aparato con herramientas cuando hay que atenderlo.',
  'record-is-complete': 'El registro tiene lo que piden la hoja y la factura.',
  'signature-or-reason': 'La hoja está firmada o el registro dice por qué no.',
  'sky-above-the-antenna-is-not-metal': 'No hay nada de metal entre la antena y el cielo.',
  'splice-is-covered': 'Cada unión está cubierta con cinta, manguito o caja cerrada.',
  'splice-is-tied': 'Cada unión está atada, de modo que un tirón del cable no llega a ella.',
  'splices-are-staggered': 'Las uniones de un mismo mazo están separadas al menos 25 mm.',
  'standing-drain-is-acceptable': 'La batería dura lo que el vehículo suele estar parado.',
  'strands-are-not-cut': 'Al pelar no se corta ningún hilo.',
  'supply-lead-is-fused': 'Cada cable que según la ficha necesita fusible lo tiene.',
  'supply-read-after': 'La batería se lee de nuevo después del trabajo.',
  'supply-within-device-window':
    'La tensión en el aparato se mantiene dentro de lo que pide, también durante el arranque.',
  'system-volts-agree': 'Las lecturas muestran el sistema nominal que nombra el registro.',
  'tape-is-long-enough': 'Una unión con cinta lleva al menos 25 mm de cinta.',
  'times-are-possible': 'Las horas de la visita son posibles.',
  'verdict-matches-readings': 'Ninguna lectura contradice lo que se dijo de un cable.',
  'vin-is-plausible': 'El número de bastidor tiene sus 17 signos y, en Norteamérica, su dígito de control.',
  'vin-year-agrees':
    'El año anotado es el año de modelo que dice un número de bastidor norteamericano, o el de al lado.',
  'voltage-drop-is-small':
    'La alimentación pierde poco hasta el aparato: 0,5 V en 12 V, 1 V en 24 V, 0,2 V cuando el aparato empieza a consumir.',
  'warning-lamps-no-worse': 'Tras el trabajo no hay encendido ningún testigo que antes no lo estuviera.',
  'windscreen-area-is-respected':
    'En el parabrisas el aparato queda dentro de la zona permitida y fuera de las líneas de visión.',
  'windscreen-mount-as-the-profile-says': 'En el parabrisas solo va un aparato hecho para ello.',
  'wire-is-no-smaller-than-the-lead-it-feeds':
    'El cable del vehículo del que se deriva no es más delgado que el cable que alimenta.',
  'wires-do-not-contradict-each-other': 'Ningún par de cables del trabajo dice lo que no puede ser cierto a la vez.',
  'within-heat-limit': 'El lugar no pasa de la temperatura que el aparato soporta.',
};
