# Español, como se escribe en América Latina y en los Estados Unidos. Sólo frases; lo que dicen se calcula en
# otra parte.

## Nombres

place-customer = el cliente
place-load-center = el tablero
place-in-line-box = la caja intermedia
place-junction-box = la caja de conexiones del calentador
place-heater-top = la parte de arriba del calentador
place-upper-compartment = el compartimiento superior
place-lower-compartment = el compartimiento inferior
place-relief = la válvula de alivio
place-drain = el drenaje y el piso
place-taps = los grifos
place-van = la camioneta

heater-short-30 = { $size }, bajo, 3500 W, 240 V
heater-plain-40 = { $size }, 4500 W, 240 V
heater-tall-50-208 = { $size }, alto, 4500 W, 208 V
heater-wide-80 = { $size }, 5500 W, 240 V
heater-small-20 = { $size }, un elemento, 1500 W, 120 V
heater-tall-50-277 = { $size }, alto, 4500 W, 277 V
heater-both-50 = { $size }, ambos elementos a la vez, 4500 W cada uno, 240 V
heater-off-peak-80 = { $size }, elemento inferior en tarifa reducida, 4500 W, 240 V
heater-board-50 = { $size }, control electrónico, 4500 W, 240 V
heater-large-120 = { $size }, 5500 W, 240 V

household-single = una persona
household-couple = una pareja
household-family = una familia de cuatro
household-full-house = tres generaciones
household-shifts = una persona que trabaja por turnos
household-retired = una pareja jubilada
household-teenagers = una familia con adolescentes
household-new-baby = una pareja con un bebé recién nacido
household-hairdresser = una peluquera que trabaja en casa
household-farm = una granja
household-cabin = una cabaña de fin de semana
household-rooms = cuartos de alquiler
household-tub-lover = alguien que adora la bañera
household-small-laundry = una pequeña lavandería

climate-north-ridge = North Ridge (frío)
climate-mill-valley = Mill Valley (cuatro estaciones)
climate-harbor-bend = Harbor Bend (templado)
climate-salt-flat = Salt Flat (caluroso y seco)
climate-frost-landing = Frost Landing (heladas fuertes)
climate-lofty-basin = Lofty Basin (valle de montaña)
climate-copper-plain = Copper Plain (seco, inviernos duros)
climate-ember-wells = Ember Wells (desierto)
climate-mangrove-point = Mangrove Point (caluroso y húmedo)
climate-cotton-bayou = Cotton Bayou (veranos húmedos)

wish-level-plain = sencilla: mucho la delata
wish-level-middling = mediana
wish-level-hard = difícil: poco la delata
family-elements = elementos
family-controls = termostatos, limitadores, perillas
family-supply = disyuntor, suministro, cables
family-hot-water = poca agua caliente, nada eléctrico
family-leaks = fugas, presión, alivio
family-water = olor, color, ruido, gas
location-basement = en el sótano
location-closet = en un clóset
location-garage = en el garaje
location-attic = en el ático, en una bandeja
location-outdoors = a la intemperie, en un gabinete

level-upper = superior
level-lower = inferior
level-upper-left-out = {" "}superior

tap-laundry = grifo de la pila de lavar
tap-kitchen = grifo de la cocina
tap-bath = grifo de la bañera
tap-shower = grifo de la ducha

circuit-heater = Calentador de agua
circuit-second-source = Control de carga
circuit-off-peak = Calentador de agua, tarifa reducida
circuit-range = { $service ->
    [wye-277] Alumbrado
   *[other] Estufa
}
circuit-dryer = { $service ->
    [wye-277] Extractor de aire
   *[other] Secadora
}

metal-copper = cobre
metal-aluminium = aluminio
element-fit = { $length } de largo, { $mount }
mount-screw-in = de rosca
mount-four-bolt = brida de 4 pernos
anode-magnesium = magnesio
anode-aluminium-zinc = aluminio con zinc
side-hot = caliente
side-cold = fría

box-fused-switch = Un interruptor con fusibles
box-timer = Un temporizador
box-utility-relay = El relé de la compañía eléctrica

stab-leg-1 = línea 1
stab-leg-2 = línea 2

handle-on = encendido
handle-off = apagado
handle-tripped = disparado

cover-panel-front = frente del tablero
cover-junction-box = tapa de la caja de conexiones
cover-box-door = puerta de la caja intermedia
cover-upper = tapa superior
cover-lower = tapa inferior
cover-upper-insulation = aislamiento superior
cover-lower-insulation = aislamiento inferior
cover-upper-shield = protector superior
cover-lower-shield = protector inferior

fitting-upper-element = brida del elemento superior
fitting-lower-element = brida del elemento inferior
fitting-nipples = niples de arriba
fitting-drain-valve = válvula de drenaje
fitting-relief-valve = válvula de alivio
fitting-bottom-rim = borde inferior de la cubierta

writing-plate = la placa de datos
writing-diagram = el diagrama de cableado
writing-stamp-upper = el marcado del elemento superior
writing-stamp-lower = el marcado del elemento inferior
writing-directory = el directorio del tablero
writing-dials = { $layout ->
    [single-element] el dial
    [electronic] los ajustes
   *[other] los dos diales
}

meter-volts = Voltios CA
meter-low-volts = Voltios CA, baja impedancia
meter-ohms = Ohmios
meter-continuity = Continuidad
meter-insulation = Aislamiento, 500 V
meter-amps = Amperios CA a través del medidor

source-receptacle = el tomacorriente de otro circuito
source-proving-unit = la unidad de comprobación

screw-shell = tanque
screw-pipe = tubo de agua fría
screw-N = barra de neutro
screw-G = barra de tierra

wire-cable-a = { $feed ->
    [neutral] cable del circuito, vivo
   *[legs] cable del circuito, línea 1
}
wire-cable-b = cable del circuito, línea 2 (blanco remarcado)
wire-cable-n = cable del circuito, neutro
wire-cable-g = tierra de equipo
wire-second-a = { $feed ->
    [neutral] segundo cable, vivo
   *[legs] segundo cable, línea 1
}
wire-second-b = segundo cable, línea 2
wire-off-peak-a = cable de tarifa reducida, línea 1
wire-off-peak-b = cable de tarifa reducida, línea 2
wire-to-box-a = { $feed ->
    [neutral] cable hacia la caja, vivo
   *[legs] cable hacia la caja, línea 1
}
wire-to-box-b = cable hacia la caja, línea 2
wire-whip-a = { $feed ->
    [neutral] cable desde la caja, vivo
   *[legs] cable desde la caja, línea 1
}
wire-whip-b = cable desde la caja, línea 2
wire-feed-a = conductor a H1
wire-feed-b = conductor a H3
wire-bond = unión a tierra del tanque
wire-strap = puente H2 a U1
wire-upper-switched = cable U2 a UEa
wire-upper-permanent = cable H4 a UEb
wire-transfer = cable U4 a D1
wire-lower-switched = cable D2 a LEa
wire-lower-permanent = cable H4 a LEb
wire-lower-feed = cable H2 a D1
wire-off-peak-feed-a = conductor a H5
wire-off-peak-feed-b = conductor a H7
wire-interlock = cable H6 a U3
wire-off-peak-permanent = cable H8 a LEb
wire-board-line = cable H2 a K1
wire-board-return = cable H4 a K2
wire-board-upper = cable K3 a UEa
wire-board-lower = cable K4 a LEa
wire-loose = cable { $letter }
wire-end = { $wire }, en { $screw }

part-upper-element = elemento superior
part-lower-element = elemento inferior
part-upper-thermostat = termostato superior
part-lower-thermostat = termostato inferior
part-limit = { $layout ->
    [off-peak] limitador superior
   *[other] limitador
}
part-lower-limit = limitador inferior
part-breaker = { $feed ->
    [neutral] disyuntor de un polo
   *[legs] disyuntor de dos polos
}
part-fuse = { $feed ->
    [neutral] fusible
   *[legs] par de fusibles
}
part-time-switch = interruptor horario
part-connectors = conectores para aluminio y cobre
part-dip-tube = tubo de inmersión
part-upper-gasket = empaque del elemento superior
part-lower-gasket = empaque del elemento inferior
part-relief-valve = válvula de alivio
part-expansion-tank = tanque de expansión
part-upper-sensor = sensor superior
part-lower-sensor = sensor inferior
part-board = tarjeta de control
part-regulator = regulador de presión
part-mixing-valve = válvula mezcladora
part-cartridge = cartucho de un grifo
part-anode = ánodo
part-drain-valve = válvula de drenaje
part-nipples = niples y uniones
part-connections = conexiones, cada una en su niple
part-hot-line = tramo de tubería de agua caliente
part-pipe-clips = abrazaderas acolchadas
part-return-check = válvula de retención del circuito de recirculación
part-pump-timer = temporizador de la bomba de recirculación
part-heater = calentador completo
part-with = { $part } ({ $detail })

fault-F01 = Elemento inferior abierto
fault-F02 = Elemento superior abierto
fault-F03 = Tanque perforado por corrosión
fault-F04 = Demanda mayor que lo que el calentador puede dar
fault-F05 = Termostato superior soldado en cerrado
fault-F06 = Termostato inferior soldado en cerrado
fault-F07 = Limitador que se dispara muy por debajo de su valor
fault-F08 = Limitador disparado, causa ya desaparecida
fault-F09 = Un polo del limitador quemado y abierto
fault-F10 = El termostato superior no transfiere
fault-F11 = El termostato superior no alimenta el elemento superior
fault-F12 = Termostato inferior abierto
fault-F13 = Elemento inferior a tierra en medio de su resistencia
fault-F14 = Elemento a tierra cerca de un extremo
fault-F15 = Espiras de un elemento en cortocircuito
fault-F16 = Elemento superior quemado en seco
fault-F17 = Elemento superior calentado en seco en un llenado, fallado después
fault-F18 = Disyuntor apagado o disparado, sin nada detrás
fault-F19 = Un polo del disyuntor no hace contacto
fault-F20 = Disyuntor cansado, o un borne caliente en él
fault-F21 = Un fusible del interruptor intermedio abierto
fault-F22 = Una línea de la acometida perdida
fault-F23 = Empalme quemado en la caja de conexiones
fault-F24 = Tornillo quemado en el termostato inferior
fault-F25 = Cable de aluminio en conectores para cobre
fault-F26 = Un temporizador o el relé de la compañía mantiene apagado el calentador
fault-F27 = Calentador de 240 V en un suministro de 208 V
fault-F28 = Los dos polos del disyuntor en una misma línea
fault-F29 = Elemento de valores distintos a los de la placa
fault-F30 = Termostato inferior alimentado desde U2 en vez de U4
fault-F31 = Tierra de equipo suelta, y un elemento con fuga
fault-F32 = Compartimiento mojado: un empaque que suda y un rastro hacia el tanque
fault-F33 = Termostato mal apoyado en el tanque
fault-F34 = Temperatura puesta demasiado baja
fault-F35 = Temperatura puesta demasiado alta
fault-F36 = Temperaturas desiguales arriba y abajo
fault-F37 = Tubo de inmersión roto o ausente
fault-F38 = Agua fría que cruza en un grifo
fault-F39 = Válvula mezcladora trabada demasiado fría
fault-F40 = Conexiones de fría y caliente cambiadas
fault-F41 = Sedimento en el fondo, elemento inferior con costra
fault-F42 = Entra agua más fría que de costumbre
fault-F43 = Tubería de agua caliente con fuga oculta
fault-F44 = Circuito de recirculación que nunca descansa
fault-F45 = Sin control de expansión en un sistema cerrado
fault-F46 = El regulador de presión no retiene nada
fault-F47 = Asiento de la válvula de alivio sucio
fault-F48 = Limitador y termostato superior soldados los dos
fault-F49 = Tanque de expansión lleno de agua
fault-F50 = El empaque del elemento fuga
fault-F51 = La válvula de drenaje gotea
fault-F52 = Niple perforado por corrosión
fault-F53 = Condensación: aire húmedo sobre metal frío
fault-F54 = Bacterias en un ánodo de magnesio: el agua caliente huele a huevo podrido
fault-F55 = Ánodo gastado y tanque con óxido: agua caliente café
fault-F56 = Ánodo gastado, sin que se note todavía
fault-F57 = Tubo de agua caliente que hace tic en sus abrazaderas
fault-F58 = Trampa de calor atorada en el niple de salida
fault-F59 = Gas en las tuberías de una casa que estuvo vacía
fault-F60 = Termistor abierto o en corto
fault-F61 = Relé de la tarjeta pegado o muerto
fault-F62 = Tarjeta aún bloqueada, ya sin causa
fault-F63 = Tubo congelado en una casa cerrada por el invierno
fault-F64 = Sólo una medición engañosa: tensión fantasma
fault-F65 = Neutro del calentador abierto
fault-F66 = Calentador de 240 V alimentado con 120 V
fault-F67 = Los dos elementos abiertos
fault-F68 = Cables de U2 y U4 cambiados
fault-F69 = Se apagó otro disyuntor: el directorio está mal
fault-F70 = Limitador separado del tanque tras un termostato que no corta
fault-F71 = Conexión caliente junto al limitador
fault-F72 = Termostato que cierra demasiado tarde
fault-F73 = Neutro de la acometida flojo
fault-F74 = El tope de un grifo deja pasar agua fría
fault-F75 = Fuga leve en el aislamiento de un elemento
fault-F76 = Elemento cuya bobina se abre al calentarse
fault-F77 = Contacto del termostato que cierra sólo a veces
fault-none = No hay nada mal

remedy-F01 = Cambiar el elemento inferior por uno igual al de la placa, con empaque nuevo.
remedy-F02 = Cambiar el elemento superior por uno igual al de la placa, con empaque nuevo.
remedy-F03 = Cambiar el calentador: un tanque perforado por el óxido no se repara.
remedy-F04 = Nada que cambiar. Explicar, y aconsejar un calentador más grande, uno adicional o menos caudal.
remedy-F05 = Cambiar el termostato superior; luego comprobar que se abren los dos polos del limitador.
remedy-F06 = Cambiar el termostato inferior; luego comprobar que se abren los dos polos del limitador.
remedy-F07 = Cambiar el limitador; luego observar un ciclo completo hasta el corte.
remedy-F08 = Ver que no queda ninguna causa, dejar enfriar, oprimir el botón y observar un ciclo completo hasta el corte.
remedy-F09 = Cambiar el limitador.
remedy-F10 = Cambiar el termostato superior.
remedy-F11 = Cambiar el termostato superior.
remedy-F12 = Cambiar el termostato inferior.
remedy-F13 = Cambiar el elemento inferior por uno igual al de la placa, con empaque nuevo.
remedy-F14 = Cambiar el elemento a tierra por uno igual al de la placa, con empaque nuevo.
remedy-F15 = Cambiar el elemento por uno igual al de la placa, con empaque nuevo.
remedy-F16 = Cambiar el elemento superior y llenar por completo antes de dar corriente.
remedy-F17 = Cambiar el elemento superior por uno igual al de la placa, con empaque nuevo; llenar antes de dar corriente.
remedy-F18 = Comprobar que los elementos no tocan el tanque, cerrar el disyuntor una vez, medir la corriente con pinza y observar.
remedy-F19 = Cambiar el disyuntor. Es trabajo dentro del tablero.
remedy-F20 = Rehacer el borne caliente, o cambiar el disyuntor por uno de su mismo valor. Es trabajo dentro del tablero.
remedy-F21 = Cambiar los dos fusibles por los que pide la placa, hallar qué fundió uno y medir con pinza las dos líneas.
remedy-F22 = Nada que cambiar aquí. Bloquear el calentador y llamar enseguida a la compañía eléctrica.
remedy-F23 = Recortar el empalme hasta cobre limpio y rehacerlo con el par marcado.
remedy-F24 = Recortar el cable hasta cobre limpio, rehacer la conexión y apretarla al par de apriete.
remedy-F25 = Poner conectores aprobados para aluminio y cobre, apretados al par de apriete. En muchos lugares el aluminio es sólo para electricistas.
remedy-F26 = Temporizador: poner su reloj en hora; si sus contactos no cierran, cambiarlo. El relé es de la compañía y está sellado: llamar a la compañía.
remedy-F27 = Nada está roto. Explicar las tres cuartas partes de la potencia, o poner elementos para 208 V.
remedy-F28 = Mover un disyuntor de dos polos a un espacio donde sus polos queden en las dos líneas; cambiar un tándem por un disyuntor de dos polos.
remedy-F29 = Cambiar el elemento por uno igual al de la placa, con empaque nuevo.
remedy-F30 = Conectar el cable de D1 en U4, como está en el diagrama, y comprobar los dos cortes.
remedy-F31 = Bloquear, restablecer la tierra de equipo, cambiar el elemento con fuga, comprobar el tanque a 0 V. Trabajo de electricista.
remedy-F32 = Cambiar el empaque sobre un asiento limpio, secar el compartimiento, y ver el aislamiento de vuelta antes de dar corriente.
remedy-F33 = Apoyarlo bien plano bajo su clip, reponer aislamiento y tapa, y comprobar su corte.
remedy-F34 = Ponerlo a { $safe-heat }.
remedy-F35 = Ponerlo a { $safe-heat } y aconsejar una válvula mezcladora para algo más caliente.
remedy-F36 = Poner los dos a { $safe-heat }.
remedy-F37 = Cambiar el tubo de inmersión y lavar los filtros de los grifos.
remedy-F38 = Hallar el grifo cerrando las llaves de paso una por una, y cambiar su cartucho.
remedy-F39 = Cambiar la válvula mezcladora y ajustarla a { $safe-heat }.
remedy-F40 = Poner cada conexión en su propio niple.
remedy-F41 = Lavar el tanque con presión hasta que el drenaje salga limpio, y cambiar el elemento inferior con costra y su empaque.
remedy-F42 = Nada que cambiar. Explicar lo que el agua más fría exige, y aconsejar una válvula mezcladora o menos caudal.
remedy-F43 = Hallar la fuga y reparar la tubería de agua caliente.
remedy-F44 = Cambiar el temporizador de la bomba o la válvula de retención, lo que deje correr el circuito.
remedy-F45 = Poner un tanque de expansión cargado a la presión estática. La válvula de alivio hizo su trabajo.
remedy-F46 = Cambiar el regulador y ajustarlo por debajo de { $street-limit }.
remedy-F47 = Lavarla dos veces; si sigue goteando, cambiarla por una de valor no mayor que la presión de trabajo del tanque.
remedy-F48 = Cortar la corriente enseguida. Cambiar el termostato superior y el limitador; luego comprobar el corte.
remedy-F49 = Cambiar el tanque de expansión, cargado a la presión de la casa.
remedy-F50 = Cambiar el empaque sobre un asiento limpio.
remedy-F51 = Cambiar la válvula de drenaje.
remedy-F52 = Cambiar los niples y las uniones.
remedy-F53 = Nada que cambiar. Secar, ver que siga seco con el tanque caliente, y aconsejar ventilación.
remedy-F54 = Cambiar el ánodo por uno de aluminio con zinc, y lavar el tanque; decir al cliente que el olor puede volver tras dejar la casa vacía.
remedy-F55 = Cambiar el ánodo; decir al cliente en qué puede acabar un tanque que se oxida, y que tras dejar la casa vacía el agua puede volver a salir parda.
remedy-F56 = Cambiar el ánodo.
remedy-F57 = Sacar el tubo de sus abrazaderas y colgarlo en abrazaderas acolchadas.
remedy-F58 = Cambiar los niples.
remedy-F59 = Abrir las ventanas, sin llama ni chispa, y dejar correr un grifo caliente hasta que deje de escupir.
remedy-F60 = Cambiar el sensor.
remedy-F61 = Cambiar la tarjeta; luego comprobar que abre.
remedy-F62 = Ver que el tanque está lleno en cada grifo y la bandeja seca; luego quitar la alimentación de la tarjeta y devolverla.
remedy-F63 = Dejar la corriente cortada. Descongelar el tubo con aire tibio, buscar grietas, llenar y purgar; sólo entonces cerrar el disyuntor.
remedy-F64 = Nada que cambiar. Medir de nuevo con baja impedancia y decir lo que se midió.
remedy-F65 = Recortar el empalme del neutro y rehacerlo con el par marcado.
remedy-F66 = Conectar el cable blanco en el segundo polo, remarcado como vivo.
remedy-F67 = Cambiar los dos elementos por unos iguales a los de la placa, y hallar qué los mató.
remedy-F68 = Conectar cada uno en su propio tornillo, como está en el diagrama, y comprobar el corte.
remedy-F69 = Cerrar el disyuntor del calentador y escribir la verdad en el directorio.
remedy-F70 = Cambiar termostato superior y limitador, los dos planos sobre el tanque; luego comprobar el corte.
remedy-F71 = Recortar el cable hasta cobre limpio, rehacer la conexión, apretarla al par de apriete y observar un ciclo.
remedy-F72 = Cambiar el termostato; luego comprobar su corte y su conexión.
remedy-F73 = Nada que cambiar aquí. Llamar enseguida a la compañía eléctrica o a un electricista: las tensiones de ambos lados se desplazan.
remedy-F74 = Reajustar o cambiar el cartucho de ese grifo.
remedy-F75 = Calentarlo, secarlo y probar otra vez; si sigue por debajo de 1 MΩ, cambiar el elemento.
remedy-F76 = Cambiar el elemento; frío, mide bien.
remedy-F77 = Cambiar el termostato; luego verlo cerrar y abrir más de una vez.

advice-demand-exceeds-capacity = La casa pide más agua caliente de la que este calentador puede dar; ayudaría uno más grande, uno adicional o menos caudal.
advice-low-supply-voltage = El edificio tiene 208 V; un calentador de 240 V da ahí tres cuartas partes de su potencia. Se acepta, o se ponen elementos de 208 V.
advice-safe-temperature = Déjelo a { $safe-heat }; el agua más caliente quema, y para más calor hace falta una válvula mezcladora en el grifo.
advice-nothing-wrong = El calentador está sano; esto es lo que se midió.
advice-cold-main = Entra agua más fría que de costumbre: tarda más en calentarse y rinde menos; el calentador no tiene nada.
advice-damp-air = El aire húmedo se deposita en el metal frío mientras entra agua fría; deje que se ventile. No hay ninguna fuga.

observation-mislabelled-breaker = un disyuntor alimenta algo distinto de lo que dice su etiqueta
observation-second-source = una segunda fuente alimenta el calentador
observation-broken-lead = una punta del medidor estaba rota
observation-no-expansion-control = un sistema cerrado sin control de expansión
observation-oversized-breaker = un disyuntor mayor de lo que su cable permite
observation-plastic-discharge = un tubo de descarga de plástico que el agua caliente ablanda
observation-uphill-discharge = un tubo de descarga que sube, de modo que el agua se queda en él
observation-no-dielectric = acero sobre cobre sin uniones dieléctricas
observation-no-pan = sin bandeja bajo un calentador donde una fuga haría daño abajo
observation-capped-discharge = un tubo de descarga tapado
observation-blocked-relief = una válvula de alivio que no deja salir nada
observation-bridged-limit = un limitador puenteado
observation-other-element = un elemento distinto del que pide la placa
observation-scalding-water = agua a más de { $safe-heat } en el grifo
hearsay-sediment-bill = “He oído que el sedimento sube el recibo de luz. ¿Es cierto?”
hearsay-bond-of-its-own = “He oído que el tanque necesita su propio cable de unión calibre 6. ¿Es cierto?”
hearsay-warm-is-clean = “He oído que a { $safe-heat } no puede vivir ahí nada que enferme. ¿Es cierto?”
hearsay-seven-tenths = “He oído que la capacidad de primera hora es siete décimos del tanque. ¿Es cierto?”
hearsay-recovery-sum = “He leído: los galones por hora son galones por 8.33 por grados, entre vatios. ¿Es cierto?”
hearsay-hot-burns = “He oído que el agua a { $burning-heat } quema en segundos. ¿Es cierto?”
hearsay-dry-burns = “He oído que un elemento encendido en un tanque vacío se quema. ¿Es cierto?”
hearsay-open-pipe = “He oído que el tubo de la válvula de alivio nunca debe taparse. ¿Es cierto?”
hearsay-rod-is-eaten = “He oído de una varilla ahí dentro que se gasta para que el tanque no. ¿Es cierto?”
hearsay-winter-is-less = “He oído que el mismo calentador da menos agua caliente en invierno. ¿Es cierto?”

helper-electrician = un electricista con licencia
helper-plumber = un plomero con licencia
helper-utility = la compañía eléctrica
helper-ambulance = una ambulancia

licence-plumber = Plomero
licence-electrician = Electricista
licence-maintenance = Mantenimiento
licence-supervised-learner = Aprendiz supervisado

mode-coached = Práctica guiada
mode-solo = Práctica sin ayuda
mode-exam = Examen

trap-broken-lead = Una punta del medidor rota
trap-mislabelled-breaker = Un disyuntor mal etiquetado
trap-second-source = Una segunda fuente
trap-ghost-volts = Tensión fantasma
trap-somebody-resets = Alguien enciende un disyuntor sin candado
trap-worn-lead = Una punta del medidor que sólo hace contacto a ratos
trap-wrong-jack = Una punta del medidor olvidada en la entrada de amperios
trap-weak-battery = La batería del medidor casi agotada

symptom-no-hot = Sin agua caliente
symptom-runs-out = Se acaba
symptom-lukewarm = Tibia
symptom-too-hot = Demasiado caliente
symptom-trips = Dispara el disyuntor
symptom-wet = Agua en el piso
symptom-relief-drips = Gotea el tubo de alivio
symptom-lights = Luces muy fuertes o débiles
symptom-tingle = Cosquilleo en los grifos
symptom-rusty = Agua caliente café
symptom-eggs = Huele a huevo podrido
symptom-slow = Tarda en recuperarse
symptom-noise = Ruido
symptom-smell = Olor
symptom-bill = Recibo
symptom-nothing = Sin queja

## Preguntas

question-last-good = ¿Cuándo estuvo el agua por última vez como debe ser?
question-how-much = ¿Empieza caliente y se acaba, o nunca se calienta?
question-too-hot = ¿A veces sale demasiado caliente?
question-tripped = ¿Se ha disparado un disyuntor, alguien ha restablecido algo?
question-who-touched = ¿Alguien ha trabajado en él o cambiado un ajuste?
question-water = ¿Hay agua en el piso, alguna gotera?
question-noise-smell = ¿Algún olor, algún color en el agua?
question-people = ¿Cuántos son ustedes, y quién usa más?
question-every-tap = ¿Pasa lo mismo en todos los grifos?
question-bill = ¿Cómo viene el recibo de la luz?
question-age = ¿Qué edad tiene el calentador?
question-house = ¿Hay algo más raro en la casa: las luces, un cosquilleo en alguna parte?
question-other-supply = ¿Tiene otra alimentación: un temporizador, un medidor de tarifa reducida, paneles solares?

question-which-tap = ¿En qué grifo lo notó primero?
question-time-of-day = ¿A qué hora del día es peor?
question-how-often = ¿Siempre, o de vez en cuando?
question-sudden = ¿Fue de golpe, o poco a poco?
question-back-again = Una vez que falla, ¿cuánto tarda en volver a haber agua caliente?
question-water-bill = ¿Cómo viene el recibo del agua?
question-noise = ¿Algún ruido: retumbos, siseos, grifos que escupen?
question-parts = ¿Se le ha cambiado alguna pieza?
question-cost = ¿Hay una suma a partir de la cual debo preguntar antes?
question-stands = ¿Dónde está el calentador?
question-strong = ¿El chorro es tan fuerte como siempre?
question-clear = ¿El agua sale clara?

## Lo que dice la gente

complaint-no-hot = Casi no tenemos agua caliente.
complaint-runs-out = Se nos acaba el agua caliente.
complaint-lukewarm = Ya nunca se calienta de verdad.
complaint-too-hot = El agua sale demasiado caliente. Alguien se va a quemar.
complaint-trips = El disyuntor del calentador se dispara a cada rato.
complaint-wet = Hay agua donde no debería, alrededor del calentador.
complaint-relief-drips = Ese tubo al lado del calentador gotea.
complaint-lights = Algo anda mal con la luz de la casa, y el calentador también depende de ella.
complaint-tingle = Los grifos nos dan cosquilleo.
complaint-rusty = El agua caliente sale café. La fría está bien.
complaint-eggs = El agua caliente apesta a huevo podrido. La fría está bien.
complaint-slow = Hay agua caliente, pero tarda una eternidad en volver.
complaint-noise = El calentador hace ruidos que antes no hacía.
complaint-smell = Hay un olor, y viene del calentador.
complaint-bill = El recibo nos sale carísimo.
complaint-nothing = Quisiéramos que alguien revisara el calentador. Nada que podamos señalar.
complaint-no-hot-1 = No hay agua caliente.
complaint-no-hot-2 = Todo lo que sale del grifo caliente está frío.
complaint-runs-out-1 = Ya no nos alcanza el agua caliente.
complaint-runs-out-2 = Siempre alguien termina con agua fría.
complaint-lukewarm-1 = El agua caliente no está caliente.
complaint-lukewarm-2 = Lo único que sale es agua tibia.
complaint-too-hot-1 = No se puede dejar la mano debajo, de lo caliente que sale.
complaint-too-hot-2 = El agua caliente es un peligro, sale hirviendo.
complaint-trips-1 = A cada rato encontramos apagado el disyuntor del calentador.
complaint-trips-2 = Algo hace saltar el disyuntor del calentador.
complaint-wet-1 = Está mojado alrededor del calentador.
complaint-wet-2 = Algo gotea donde está el calentador.
complaint-relief-drips-1 = Sale agua del tubo del costado.
complaint-relief-drips-2 = El tubo de alivio está mojado, y hay una mancha debajo.
complaint-lights-1 = La luz está rara en toda la casa.
complaint-lights-2 = Las luces hacen cosas raras, y nos preocupa el calentador.
complaint-tingle-1 = El grifo muerde.
complaint-tingle-2 = Sentimos un hormigueo al tocar el grifo.
complaint-slow-1 = Se calienta, pero tarda medio día.
complaint-slow-2 = El calentador se ha vuelto lento.
complaint-rusty-1 = Nuestra agua caliente parece té.
complaint-rusty-2 = La bañera se llena de agua café.
complaint-eggs-1 = La ducha huele a huevo podrido.
complaint-eggs-2 = El agua caliente apesta, como a algo podrido.
complaint-noise-1 = Algo suena fuerte en el tanque.
complaint-noise-2 = Oímos el calentador a través de la pared.
complaint-smell-1 = Algo huele cerca del calentador.
complaint-smell-2 = Huele, y no nos gusta.
complaint-bill-1 = El recibo nos asustó.
complaint-bill-2 = Pagamos mucho más que antes.
complaint-nothing-1 = Funciona, creo. Por favor échele un vistazo.
complaint-nothing-2 = Sólo queremos que lo revisen.

says-last-good-unknown = No sabría decir cuándo estuvo bien por última vez.
says-last-good = { $days ->
    [0] Esta mañana todavía estaba bien, creo.
    [one] Estuvo bien hasta ayer.
   *[other] Estuvo bien hasta hace unos { $days } días.
}
says-never = Nunca se calienta.
says-runs-out = Empieza caliente, y tras más o menos { $after } de ducha se acaba.
says-lukewarm = Lo más que llega es a tibia.
says-enough = Hay tanta como siempre.
says-not-too-hot = No, demasiado caliente no sale.
says-too-hot = Sale tan caliente que uno quita la mano.
says-not-tripped = Que yo sepa no se disparó nada, y nadie restableció nada.
says-breaker-tripped = { $times ->
    [one] El disyuntor se apagó una vez; lo volvieron a encender.
   *[other] El disyuntor se apagó { $times } veces; cada vez lo volvieron a encender.
}
says-button-pushed = { $times ->
    [one] { $who } oprimió el botón rojo una vez.
   *[other] { $who } oprimió el botón rojo { $times } veces.
}
says-nobody = Que yo sepa nadie lo tocó.
says-touched = { $who } le echó un vistazo.
says-touched-dial = { $who } le echó un vistazo, y creo que cambió el ajuste.
meddler-nobody = Nadie
meddler-household = Uno de nosotros
meddler-neighbour = Un vecino
meddler-tradesperson = Alguien del oficio, hace tiempo,
says-dry = No, está seco.
says-wet-relief = El tubo de esa válvula gotea: unos { $a-day } al día.
says-wet-floor = Hay agua en el piso: unos { $a-day } al día.
says-burnt = De vez en cuando huele como a chamuscado.
says-eggs = El agua caliente huele a huevo podrido.
says-rusty = El agua caliente sale café, peor por la mañana.
says-no-smell = Ningún olor.
says-people = { $adults ->
    [one] Aquí vive un adulto
   *[other] Aquí viven { $adults } adultos
}{ $children ->
    [0] .
    [one] {" "}y un niño.
   *[other] {" "}y { $children } niños.
}
says-demand = Tenemos más gente que de costumbre.
says-not-every-tap = No, no en todos los grifos.
says-which-tap-unknown = No sabría decir dónde primero.
says-which-tap = Primero fue aquí: { $tap }.
says-all-day = Da igual la hora.
says-worst-morning = Por la mañana, sobre todo.
says-worst-midday = A mediodía, sobre todo.
says-worst-evening = Por la tarde y la noche, sobre todo.
says-worst-night = De madrugada, sobre todo.
says-how-often = { $times ->
    [0] No lo he visto pasar.
    [10] Siempre.
   *[other] Unas { $times } veces de cada diez.
}
says-sudden = De golpe.
says-creeping = No de golpe. A veces sí, a veces no.
says-not-back = Desde entonces no ha vuelto.
says-back-again = Más o menos { $after }, y vuelve a salir caliente.
says-water-bill-up = El recibo del agua también subió.
says-rumbles = Retumba y truena mientras calienta.
says-hisses = De vez en cuando sisea el tubo del costado.
says-spits = Los grifos escupen.
says-ticks = Un tubo hace tic cuando corre el agua caliente, y después.
says-no-noise = Ningún ruido que yo haya notado.
says-no-parts = Que yo sepa no se cambió ninguna pieza.
says-parts = { $who } le puso una pieza, no hace mucho.
says-cost-open = Haga lo que haga falta.
says-cost = Por favor pregúnteme antes de pasar de { $dollars } dólares.
says-stands = Está { $place }.
says-weak-flow = El lado caliente sale más débil que antes.
says-strong-flow = Sale tan fuerte como siempre.
says-grit = Trae arenilla, y a veces escamas.
says-clear = Clara, sí.
says-every-tap = Sí, todos los grifos igual.
says-bill-up = El recibo subió, ahora que lo dice.
says-bill-down = Más bajo que de costumbre, si acaso.
says-bill-same = Más o menos como siempre.
says-age = { $years ->
    [one] El calentador tiene cerca de un año.
   *[other] El calentador tiene unos { $years } años.
}
says-house-fine = No, todo lo demás funciona.
says-house-lights = Unas luces están débiles y otras deslumbran, y cambia según lo que esté encendido.
says-house-half = La mitad de las luces están débiles o apagadas.
says-house-bright = Algunas luces deslumbran.
says-house-tingle = Cuando agarro el grifo me cosquillean los dedos.
says-other-supply = Tiene una caja de la compañía eléctrica, para las horas baratas.
says-no-other-supply = Que yo sepa, no.

## Acciones

act-tell-household = Se avisó a la casa: sin corriente ni agua caliente, no tocar nada
act-read = Lectura: { $what }
act-look = Se miró { $at }
act-listen = Se escuchó en { $at }
act-smell = Se olió en { $at }
act-touch = Se tocó: { $at }
touch-water = agua del { $tap }
act-wipe = Se secó: { $fitting }
act-gloves-on = Guantes puestos
act-gloves-off = Guantes fuera
act-eyes-on = Lentes de seguridad puestos
act-eyes-off = Lentes de seguridad fuera
act-breaker-on = Disyuntor { $slot } encendido
act-breaker-off = Disyuntor { $slot } apagado
act-try-start = Se probó el arranque: ajuste arriba, a escuchar
act-lock-on = Candado y etiqueta propios en el disyuntor { $slot }
act-lock-off = Candado y etiqueta fuera del disyuntor { $slot }
act-move-breaker = Disyuntor { $slot } movido a un espacio con las dos líneas
act-box-handle-on = Caja intermedia cerrada
act-box-handle-off = Caja intermedia abierta
act-box-lock-on = Candado y etiqueta propios en el interruptor intermedio
act-box-lock-off = Candado y etiqueta fuera del interruptor intermedio
act-pull-fuse = { $feed ->
    [neutral] Se sacó el fusible
   *[legs] Se sacó el fusible de la { $leg }
}
act-put-fuse = { $feed ->
    [neutral] Se repuso el fusible
   *[legs] Se repuso el fusible de la { $leg }
}
act-test-fuse = { $feed ->
    [neutral] Ohmios a través del fusible, fuera de sus clips
   *[legs] Ohmios a través del fusible de la { $leg }, fuera de sus clips
}
act-set-clock = Reloj del temporizador puesto en hora
act-portable-on = Se enchufó un calefactor portátil de 1500 W en un tomacorriente de la { $leg }
act-portable-off = Se desenchufó el calefactor portátil del tomacorriente de la { $leg }
act-relabel = Directorio corregido: el disyuntor { $slot } alimenta { $feeds }
act-cover-off = Se quitó: { $cover }
act-cover-on = Se repuso: { $cover }
act-meter = { $function }: roja { $red }, negra { $black }
act-zero-leads = Puntas unidas, ohmios a cero
act-prove-meter = Medidor comprobado en { $on }
act-spare-leads = Puntas de repuesto y fusible nuevo en el medidor
act-jack-volts = Punta roja en la entrada de voltios
act-jack-amps = Punta roja en la entrada de amperios
act-change-battery = Batería nueva en el medidor
act-non-contact = Detector sin contacto en { $at }
act-clamp-pair = Pinza alrededor de { $first } y { $second } juntos
act-clamp = Pinza alrededor de: { $wire }
act-clamp-both = { $feed ->
    [neutral] Pinza alrededor de vivo y neutro juntos
   *[legs] Pinza alrededor de las dos líneas juntas
}
act-press-reset = Se oprimió el botón del limitador
act-lift = Se desconectó: { $end }
act-label = Se etiquetó: { $end }
act-land = Se conectó en { $screw }, a mano: { $end }
act-land-torqued = Se conectó en { $screw }, al par de apriete: { $end }
act-remake = Se rehízo a mano: { $end }
act-remake-torqued = Se recortó y rehízo al par de apriete: { $end }
act-dial = { $layout ->
    [electronic] Zona { $level } puesta a { $to }
   *[other] Dial { $level } puesto a { $to }
}
act-seat = Termostato { $level } apoyado plano en el tanque
act-main-shut = Llave de paso general cerrada
act-main-part = Llave de paso general abierta al { $percent } %
act-main-open = Llave de paso general abierta
act-cold-shut = Válvula de agua fría cerrada
act-cold-part = Válvula de agua fría abierta al { $percent } %
act-cold-open = Válvula de agua fría abierta
act-return-shut = Válvula del circuito cerrada
act-return-part = Válvula del circuito abierta al { $percent } %
act-return-open = Válvula del circuito abierta
act-ventilate = Ventanas abiertas, llamas y chispas lejos
act-thaw = Tubo calentado con aire tibio
act-tap-shut = Se cerró el { $tap }
act-tap-part = Se abrió el { $tap } al { $percent } %
act-tap-open = Se abrió del todo el { $tap }
act-bucket = { $volume } del { $tap } a un balde, con reloj
act-hose-on = Manguera en el drenaje
act-hose-off = Manguera fuera del drenaje
act-drain-shut = Drenaje cerrado
act-drain-part = Drenaje abierto al { $percent } %
act-drain-open = Drenaje abierto
act-lever-on = Palanca de la válvula de alivio arriba
act-lever-off = Palanca de la válvula de alivio abajo
act-wait = Espera de { $time }
act-wait-for-cut-out = Se esperó el corte del control
act-let-them-use = Los de la casa usaron agua caliente durante { $time }
act-thermometer = Termómetro: { $at }
act-gauge-on = Manómetro con aguja de máxima puesto, aguja abajo
act-gauge-off = Manómetro fuera
act-read-gauge = Se leyó el manómetro
act-stops-shut = Se cerraron las llaves de paso del { $tap }
act-stops-open = Se abrieron las llaves de paso del { $tap }
act-sample-hot = Un vaso de agua caliente del { $tap }, a ver y oler
act-sample-cold = Un vaso de agua fría del { $tap }, a ver y oler
act-look-at-anode = Se desenroscó el ánodo para mirarlo
act-read-water-meter = Se leyó el medidor de agua
act-unplug = Se sacó el conector del sensor { $level }
act-plug = Se enchufó el sensor { $level }
act-tank-charge = Carga del tanque de expansión en su válvula de aire
act-replace = Se cambió: { $part }
act-part-pipes = Tubos sueltos en los niples
act-carry-on = Calentador viejo retirado entre dos
act-carry-off = Calentador viejo retirado a solas
act-join-on = Tubos unidos con niples dieléctricos
act-join-off = Tubos unidos, cobre sobre acero desnudo
act-reuse-relief = Válvula de alivio vieja con su tubo puesta otra vez
act-finding = Hallazgo escrito: { $fault }
act-advise = Se dijo al cliente: { $advice }
act-report = Se informó: { $what }
act-stop-and-call = Se paró, y se llamó a { $whom }
act-agree-cost = Se dijo el precio del trabajo y lo aceptaron
act-answer-so = Se les dijo: es cierto
act-answer-not-so = Se les dijo: no es cierto
act-tell-result = Se dijo al cliente qué se halló y se hizo, y que el agua saldrá caliente
act-hand-over = Trabajo entregado
act-time-up = Se acabó el reloj de la página ({ $minutes } minutos, sin prueba)

probe-shell = tanque junto al control { $level }
probe-cold-pipe = tubo en el niple marcado fría
probe-hot-pipe = tubo en el niple marcado caliente
probe-relief-pipe = tubo de la válvula de alivio
probe-return-pipe = retorno del circuito de recirculación
probe-drain = agua del drenaje

## Lo que se vio

shown-pressure = { $now } ahora, { $highest } la máxima desde que se bajó la aguja
shown-nobody-drew = Nadie sacó agua caliente.
shown-quiet = No pasó nada que se notara.
shown-no-cut-out = { $hours ->
    [0] Nada que esperar: ningún control pide calor.
   *[other] Ningún clic en { $hours } horas.
}
shown-charge = { $air } de aire
shown-charge-water = Sale agua por la válvula de aire.
shown-plate = { $nominal }, { $at-once ->
    [0] un elemento { $rating }
    [1] los dos elementos { $rating }, no a la vez
   *[other] los dos elementos { $rating }, a la vez
}, presión de trabajo { $working }
shown-diagram = El diagrama muestra dónde va cada cable.
shown-label = { $slot }: { $circuit }, { $amps } A
shown-label-more = { $before }; { $next }
shown-stamp = Marcado del elemento { $level }: { $rating }
shown-dials = { $layout ->
    [single-element] Dial { $upper }
    [electronic] Zona superior { $upper }, zona inferior { $lower }
   *[other] Dial superior { $upper }, dial inferior { $lower }
}
shown-non-contact-sounds = El detector sin contacto suena.
shown-non-contact-silent = El detector sin contacto calla. Eso no muestra que esté sin tensión.
shown-refused = No se hizo. { $why }
shown-stopped = El instructor lo detuvo antes de que hiciera daño. { $harm }
shown-bucket = { $volume } a { $flow }; { $first } al principio, { $last } al final.
shown-bucket-fell = { $volume } a { $flow }; { $first } al principio, { $last } al final; { $fall } menos tras { $after }.
shown-bucket-spat = Escupió aire.
display-over = OL
display-blank = La pantalla sigue apagada
display-tone = Tono
display-silent = Sin tono
display-live = Con tensión ({ $volts }): lectura que no vale

refused-cover-on = Todavía está en su lugar: { $cover }.
refused-order-of-covers = Estorba: { $cover }.
refused-already-so = Ya está así.
refused-not-here = Aquí no hay tal cosa.
refused-wire-landed = Está en su tornillo: { $end }. Desconéctelo primero.
refused-wire-lifted = Está fuera de su tornillo: { $end }.
refused-which-wire = Quedó suelto entre otros sin etiqueta: { $end }. No se ve cuál es, así que no hay nada que escribir. Averigüe con el óhmetro adónde va.
refused-out-of-reach = Ese cable no llega a { $screw }.
refused-locked = Un candado lo mantiene apagado.
refused-sealed = La compañía eléctrica lo selló. Sólo ella lo abre.
refused-no-hasp = Nada en él admite candado: un control no aísla.
refused-fuse-in = El fusible está en sus clips. Sáquelo primero, o mida a través del interruptor.
refused-not-off = Tiene que estar apagado antes de poner candado.
refused-tank-not-drained = Hay agua por encima de la abertura. Primero tiene que bajar del { $percent } %.
refused-other-mount = No va en esa abertura: un elemento se enrosca en una rosca de 1 pulgada o se sujeta con cuatro pernos. Mire el viejo.
refused-too-long = Es más largo que el ancho del tanque: su punta toca antes de que asiente el empaque.
refused-under-pressure = El tanque sigue con presión.
refused-main-open = Está antes de la llave del calentador: cierre primero la llave de paso general.
refused-pipes-on = Los tubos aún están en sus niples.
refused-heater-stands = El calentador viejo aún está ahí.
refused-no-gauge = El manómetro no está puesto.
refused-no-flow = De ese grifo no sale nada.
refused-nothing-to-reach = Desde aquí no se alcanza nada.
refused-out-of-range = Ese número no tiene sentido aquí.
refused-no-such-step = En el registro todavía no hay un paso { $step }.
refused-over = El trabajo terminó.
refused-same-point = Las dos puntas están en el mismo punto.

noticed-breaker-tripped = El disyuntor { $slot } salta con un chasquido.
noticed-somebody-reset = Alguien de la casa encendió el disyuntor { $slot }. Nada lo impedía.
noticed-box-closes = Un golpe en una línea del calentador: cierran contactos.
noticed-box-opens = Un golpe en una línea del calentador: abren contactos.
noticed-click = Un clic del control { $level }.
noticed-relief-runs = La válvula de alivio descarga.
noticed-flooding = El agua se extiende por el piso: unos { $volume } hasta ahora.
noticed-bang = Un estallido dentro del tanque, y olor a quemado.
noticed-drain-stopped = El drenaje se detiene aunque queda agua: no entra aire.
noticed-tank-empty = El drenaje terminó de vaciar.
noticed-runs-solid = El { $tap } sale lleno y parejo, ya sin aire.
noticed-low-battery = El medidor muestra batería baja: sus lecturas pueden ser falsas.
noticed-flash = Un destello y un estallido en { $at }.
noticed-again = { $noticed } ({ $count } veces)

sight-ordinary = Nada fuera de lo común.
sight-breaker = El disyuntor { $slot } está { $handle }.
sight-breaker-locked = El disyuntor { $slot } está { $handle }, con candado.
sight-box-shut = { $kind } está en medio de la línea, con la puerta cerrada.
sight-box-on = { $kind } está en medio de la línea, en cerrado.
sight-box-off = { $kind } está en medio de la línea, en abierto.
sight-box-locked = { $kind } está en medio de la línea, en abierto, con candado.
sight-off-peak-on = El relé sellado de la compañía está al inicio del cable de tarifa reducida, su indicador en cerrado.
sight-off-peak-off = El relé sellado de la compañía está al inicio del cable de tarifa reducida, su indicador en abierto.
sight-box-hours = Su reloj marca { $shows }. Está apagado de { $from } a { $until }.
sight-fuse-out = { $feed ->
    [neutral] El fusible está fuera de sus clips.
   *[legs] El fusible de la { $leg } está fuera de sus clips.
}
sight-portable-dark = El calefactor portátil en la { $leg } sigue apagado y frío.
sight-portable-faint = El calefactor portátil en la { $leg } apenas brilla y casi no calienta.
sight-portable-full = El calefactor portátil en la { $leg } brilla y calienta como debe.
sight-tandem = El disyuntor { $slot } es un tándem: dos palancas angostas en un espacio, sin unión entre ellas.
sight-one-leg = Los dos polos del disyuntor { $slot } están en espacios de una misma línea.
sight-cable = El cable es { $awg } AWG de { $metal }.
sight-cable-unrated = El cable es { $awg } AWG de { $metal }, en conectores marcados sólo para cobre.
sight-charred = Carbonizado: { $end }.
sight-browned = Tostado por el calor sobre su contacto { $contact }.
sight-lifted = Fuera de su tornillo: { $end }.
sight-crossed = En { $on } y no en su propio tornillo: { $end }.
sight-button-proud = El botón del limitador está salido.
sight-button-in = El botón del limitador está metido.
sight-limit-bridged = Un trozo de cable puentea cada polo del limitador.
sight-lower-button-proud = El botón del limitador inferior está salido.
sight-lower-button-in = El botón del limitador inferior está metido.
sight-wet = Con agua: { $fitting }.
sight-dripping = Se forman gotas: { $fitting }.
sight-dry = Sin agua: { $fitting }.
sight-floor = Agua en el piso, unos { $volume }.
sight-relief-running = Sale agua por el tubo de la válvula de alivio.
sight-expansion-tank = Un tanque de expansión cuelga del tubo de agua fría.
sight-no-expansion-tank = No hay tanque de expansión en el tubo de agua fría.
sight-check-valve = Hay una válvula de retención en la línea fría, junto al medidor.
sight-no-check-valve = No hay válvula de retención ni regulador en la línea fría.
sight-discharge-metal = El tubo de descarga es de metal y baja hasta un extremo abierto sobre el piso.
sight-discharge-plastic = El tubo de descarga es de plástico blanco delgado.
sight-discharge-uphill = El tubo de descarga sube antes de bajar.
sight-discharge-capped = Un tapón cierra el extremo del tubo de descarga.
sight-dielectric = Uniones dieléctricas juntan acero y cobre.
sight-no-dielectric = El cobre está roscado directo al acero, verde y café en la unión.
sight-pan = El calentador está en una bandeja con desagüe.
sight-no-pan = El calentador está sobre tablas desnudas, sin bandeja.
sight-pipes-off = Los tubos están fuera de los niples: sus extremos están abiertos.
sight-open-port = No hay válvula de alivio: su boca está abierta.
sight-no-heater = Aquí no hay calentador.
sight-rust-streak = Un hilo de óxido baja por la cubierta, seco.
sight-old-soot = Hay hollín viejo detrás de la tapa.
sight-lime-crust = La punta del tubo de descarga tiene una costra seca de sarro.
sight-condensate = Junto al calentador gotea, frío, un tubo fino de plástico que sale de la pared.
sight-flakes = Escamas blancas en el filtro del grifo.
sight-loop-runs = En el retorno hay una bomba de recirculación, y zumba.
sight-loop-rests = En el retorno hay una bomba de recirculación, en reposo.
sight-grit = Con el agua del drenaje salen arenilla y sarro.
sight-popping = Truena y crepita en lo bajo del tanque.
sight-ticking = El tubo de agua caliente hace tic.
sight-tap-dry = No sale nada del { $tap }.
sight-tap-runs = El { $tap } da { $flow }.
sight-tap-spits = El { $tap } escupe aire y agua.
sight-drain-runs = El drenaje da { $flow }.
sight-drain-stands = Del drenaje no sale nada.
sight-lever-solid = Agua a chorro lleno, sin aire, por la válvula de alivio.
sight-lever-airy = Aire, luego escupidas, por la válvula de alivio.
sight-used-well = A las { $at }, { $tap } durante { $ran }: bien, dicen.
sight-used-ran-cold = A las { $at }, { $tap } durante { $ran }: fría a los { $after }, dicen.
sight-used-lukewarm = A las { $at }, { $tap } durante { $ran }: nunca bastante caliente, dicen.
sight-used-never-warm = A las { $at }, { $tap } durante { $ran }: nunca templada, dicen.
sight-used-too-hot = A las { $at }, { $tap } durante { $ran }: demasiado caliente para la mano, dicen.
sight-used-unfelt = A las { $at } una máquina tomó agua caliente ({ $tap }) durante { $ran }.
sight-used-spat = A las { $at }, { $tap } durante { $ran }: escupía aire, dicen.
sight-used-dry = A las { $at } no salió nada ({ $tap }), dicen.
sight-lever-nothing = No sale nada por la válvula de alivio.
sight-starts = Algo arranca: un clic y un zumbido.
sight-starts-not = No arranca nada.
sight-clicked = El botón entra con un clic.
sight-no-click = El botón no hace clic.
sight-burnt-smell = Olor a aislamiento quemado.
sight-simmering = Un elemento borbotea.
sight-warmth = Unos { $about } al tacto.
sight-board-heats = La tarjeta dice: sin falla.
sight-board-dark = La tarjeta está apagada.
sight-board-says = La tarjeta dice: { $lockout }.
lockout-upper-open = sensor superior abierto
lockout-lower-open = sensor inferior abierto
lockout-upper-shorted = sensor superior en corto
lockout-lower-shorted = sensor inferior en corto
lockout-too-hot = agua demasiado caliente
lockout-no-water = sin agua sobre el elemento
lockout-leak = agua en la bandeja
sight-sample-clear = El agua { $side } está clara y no huele a nada.
sight-sample-rusty = El agua { $side } está café; no huele a nada.
sight-sample-eggs = El agua { $side } está clara y huele a huevo podrido.
sight-sample-both = El agua { $side } está café y huele a huevo podrido.
sight-rod-whole = El ánodo, de { $metal }, está picado pero grueso en todo su largo.
sight-rod-worn = El ánodo, de { $metal }, está gastado: se le ve el alma en { $bare } de { $length }.
sight-meter-turns = La aguja chica del medidor de agua gira; marca { $reading }.
sight-meter-stands = El medidor de agua está quieto; marca { $reading }.
sight-off-the-shell = El termostato { $level } está separado del tanque.
sight-limit-off-the-shell = El limitador { $level } está separado del tanque.
sight-scorched = El elemento { $level } está chamuscado, sin su baño metálico.
sight-water = Agua a unos { $temperature }.

## Marco

window-doors = Practicar una visita de servicio
window-drill = Trabajo
window-debrief = Repaso
window-instructor = Instructor
window-exam = Examen
window-atlas = Atlas de fallas
window-sources = De dónde salen los números
shell-under-way = El trabajo en curso
shell-words-coming = Se están cargando los textos de esta página …
shell-words-failed = No se pudieron cargar los textos de esta página. Se puede practicar sin ellos; cargue la página otra vez para lo demás.
shell-caution = Práctica en un calentador simulado. En uno real siga el código local y trabaje bajo una persona con licencia.
shell-close = Cerrar
shell-clear = Terminar y limpiar este aparato
shell-clear-asked = Esto borra el trabajo y su registro de este navegador. No se puede deshacer.
shell-to-doors = A la entrada
shell-skip = Saltar al trabajo
shell-to-meter = Al medidor
shell-units-us = Unidades: °F, gal, psi
shell-units-si = Unidades: °C, L, kPa
shell-language = Idioma
shell-language-failed = No se pudieron traer las palabras de ese idioma. Revise la conexión y elija otra vez.
keeping-blocked = Este navegador no guarda nada aquí (una ventana privada, un marco o un ajuste). Termine sin recargar y guarde el registro como archivo.
keeping-full = El almacenamiento del navegador está lleno: lo que haga desde ahora se pierde al recargar. Guarde el registro como archivo al final.
keeping-elsewhere = Otra pestaña de este navegador tomó un trabajo, y ése es el que se guarda. Lo que haga aquí se pierde al recargar.
keeping-unopened = En este aparato hay un trabajo guardado, pero no se puede abrir: { $why }
keeping-unreadable = esta página no puede leer su registro. Recargue para tener la página más nueva; si no basta, guarde lo que hay como archivo.
keeping-broken = El trabajo guardado no se pudo leer desde el paso { $step }: se recuperaron los pasos anteriores y lo demás se apartó tal como está.
unread = De un trabajo anterior en este aparato algo no se pudo leer. Se conserva tal como está: guárdelo como archivo para su instructor o para quien cuida la página, y luego bórrelo.
unread-save = Guardar lo que no se pudo leer
unread-clear = Borrarlo

## La pantalla del trabajo

job-customer-says = Lo que dice el cliente
job-ask = Preguntar
job-go-to = Ir a
job-plate = Placa de datos
job-log = Registro
job-carried = Repetido desde la acción { $step }, como práctica; el registro lo dice
job-take-back = Deshacer la última acción
job-taken-back = { $count ->
    [one] { $count } acción deshecha; el registro lo dice
   *[other] { $count } acciones deshechas; el registro lo dice
}
pocket-title = Tarjeta de bolsillo: voltios, vatios, amperios, ohmios
pocket-watts = W
pocket-volts = { $volts } V
pocket-amps = { $amps } A
pocket-ohms = { $ohms } Ω
pocket-rules = Los amperios son vatios entre voltios; los ohmios, voltios por voltios entre vatios. Con otro voltaje que el estampado, los vatios van con el cuadrado de los voltios: a 208 V, tres cuartos de lo que dan 240 V.
pocket-caution = Una guía para practicar. La placa y el sello del calentador que se tiene delante van primero.
job-meter = Medidor
job-kit = Equipo
job-suspects = Sus sospechas
job-finding = Hallazgo
job-time = Dejar pasar el tiempo
job-tell = Decir al cliente
job-call = Parar aquí y llamar …
job-call-asked = Parar el trabajo, dejarlo seguro y llamar a alguien. El trabajo termina aquí. ¿A quién?
job-hint = Pedir pista
job-hint-short = Pista
job-hand-over = Entregar trabajo
job-hand-over-short = Entregar
job-hand-over-asked = ¿Entregar ya el trabajo? Después no se puede hacer nada más.
job-not-yet = Todavía no
job-whole-drawing = Dibujo completo
job-nothing-yet = Todavía no se ha hecho nada.
job-seen = Visto
job-debrief = Al repaso
job-opening = Abriendo el trabajo que guarda este dispositivo …
job-no-job = No hay ningún trabajo en curso.
job-licence = Su licencia
job-not-looked = aún sin mirar
job-left = Cliente y registro
job-right = Medidor, equipo y notas
job-bench = Dibujo y lugar
job-the-job = El trabajo
job-sections = Secciones
job-clock = Hora del día
clock-day = día { $day } { $time }
job-read-plate = Leer la placa de datos
job-plate-storage = Capacidad
job-plate-volts = Suministro
job-plate-elements = { $layout ->
    [single-element] Elemento
   *[other] Elemento superior / inferior
}
job-plate-mount = Largo, montaje
job-plate-both = Los dos a la vez
job-plate-circuits = Circuitos
job-plate-control = Control
job-plate-pressure = Presión de trabajo
job-no = no
job-yes = sí
job-tell-household = Sin corriente ni agua: no toquen nada
job-agree-cost = El precio del trabajo, y si lo aceptan
job-they-ask = Preguntan
job-is-so = Es cierto
job-is-not-so = No es cierto
job-tell-result = Qué se halló y se hizo; agua caliente
job-advise = Aconsejar
job-report = Informar algo visto
job-title = Visita { $call } · { $house } { $street }
job-code = Código { $code }
job-ended-handed-over = El trabajo está entregado.
job-ended-called = El trabajo terminó: paró y llamó a { $whom }.
job-ended-injured = El trabajo terminó: alguien resultó herido.
job-ended-time-out = El trabajo terminó: se acabó su tiempo.
job-ended-clock-out = El trabajo terminó: se acabó el tiempo del reloj de pared.
tab-call = Visita
tab-heater = Tanque
tab-meter = Medidor
tab-kit = Equipo
tab-log = Notas
standing-open = abierta
standing-likely = probable
standing-out = fuera
hint-ask = Pregunte primero al cliente: cuándo empezó, cómo falla, quién lo tocó.
hint-plate = Lea la placa de datos. Voltios y vatios dicen lo que debe medir.
hint-watch = Mire, escuche y mida mientras todavía funciona: hay cosas que sólo se ven con corriente.
hint-tell = Avise a la casa que se cortarán la corriente y el agua caliente, y que no toquen nada.
hint-lock = Antes de meter la mano: disyuntor apagado, su propio candado y etiqueta, y luego pruebe el arranque.
hint-prove = Compruebe el medidor en una fuente que sabe que tiene tensión. Un medidor muerto lee 0 V en todo.
hint-dead = { $feed ->
    [neutral] Muestre que está sin tensión: de vivo a neutro, luego cada uno y cada tornillo que vaya a tocar contra una tierra comprobada. Después compruebe otra vez el medidor. Hasta entonces cuenta como con tensión.
   *[legs] Muestre que está sin tensión: de línea a línea, luego cada línea y cada tornillo que vaya a tocar contra una tierra comprobada. Después compruebe otra vez el medidor. Hasta entonces cuenta como con tensión.
}
hint-find = ¿Qué dos sospechas quedan? Elija la única lectura que sería distinta entre ellas. Desconecte un cable donde otro camino respondería por la pieza.
hint-repair = Ya tiene un hallazgo. Cambie eso y nada más, con lo que pide la placa.
hint-refill = Agua antes que corriente: llene con un grifo caliente abierto hasta que salga lleno y parejo, sin aire.
hint-show = Compruebe la reparación: voltios y amperios mientras calienta; luego espere el corte y vea que la corriente se fue.
hint-result = Diga al cliente qué se halló, qué se hizo, y que el agua saldrá caliente.
hint-hand-over = Tapas puestas, sin fugas, ajuste a { $safe-heat }: si es así, entregue.
plate-electronic = electrónico, dos sensores
plate-watts = { $layout ->
    [single-element] { $watts } W
   *[other] { $watts } / { $watts } W
}
plate-supply = { $volts } V 1Ø
plate-supply-neutral = { $volts } V 1Ø, vivo y neutro
plate-two-circuits = dos, el inferior en tarifa reducida

## Avisos de las acciones más riesgosas

caution-act-panel-front = La barra detrás del frente sigue con tensión aunque todos los disyuntores estén apagados. En muchos lugares este trabajo está reservado.
caution-act-insulation = 500 V en las puntas. Sólo en un circuito comprobado sin tensión, con las manos lejos del metal.
caution-act-power = Antes de dar corriente: tanque lleno, tapas puestas, ningún candado ajeno. Un elemento en el aire se quema en segundos.
caution-act-hot-water = El agua puede quemar. Mantenga a la gente lejos de la salida.
caution-act-replace = Sólo sin tensión, con candado y comprobado; trabajo de agua sólo con el tanque drenado bajo la abertura.
caution-act-portable = Con un neutro flojo esta carga eleva la tensión de la otra línea. Leer ambas líneas y desenchufarlo enseguida.

## Medidor, equipo, camioneta y notas

dial-volts = V CA
dial-low-volts = V CA baja imp.
dial-ohms = Ohmios
dial-continuity = Continuidad
dial-insulation = Aisl. 500 V
dial-amps = A CA
dial-clamp = Pinza A
clamp-both-legs = { $feed ->
    [neutral] vivo y neutro del cable del circuito
   *[legs] las dos líneas del cable del circuito
}
clamp-pair = { $first } y { $second }
kit-meter-dial = Dial del medidor
kit-place-leads = Coloque primero las puntas
kit-place-clamp = Elija primero un cable para la pinza
kit-take-reading = Tomar la lectura
kit-over = OL
kit-tone = tono
kit-no-tone = sin tono
kit-live-volts = V vivo
kit-nowhere = sin colocar
kit-around = Pinza alrededor de
kit-around-too = y alrededor de
kit-no-other = ningún otro cable
kit-low-battery = batería baja
kit-prove = Comprobar y preparar el medidor
kit-prove-receptacle = Comprobar: tomacorriente vivo
kit-prove-unit = Comprobar: unidad de prueba
kit-zero-leads = Poner puntas a cero
kit-spare-leads = Otras puntas, fusible nuevo
kit-jack-volts = Punta roja a voltios
kit-jack-amps = Punta roja a amperios
kit-change-battery = Batería nueva
kit-lock-and-tag = Candado y etiqueta
kit-gloves = Guantes
kit-eyes = Lentes de seguridad
kit-hose-kit = Manguera
kit-gauge-kit = Manómetro
kit-wait = Esperar
kit-wait-verb = Esperar
kit-wait-cut-out = Esperar el corte del control
kit-use-water = Dejar que usen el agua
kit-use-water-verb = Dejar
kit-let-them-use = Dejar que usen el agua
kit-fit = Poner
kit-fit-part = Poner { $part }
kit-the-one = modelo adecuado
kit-add-suspect = Agregar una sospecha
kit-choose = Elegir
kit-nothing-wrong = El calentador no tiene nada
kit-wrong = Qué está mal
kit-write-finding = Escribir el hallazgo
kit-written = Escrito: { $fault }
kit-red-free = Roja libre
kit-black-free = Negra libre
kit-red-at = Roja en { $point }
kit-black-at = Negra en { $point }
kit-red-lead-on = Punta roja en
kit-black-lead-on = Punta negra en
kit-seat-cleaned = asiento limpio
kit-seat-as-it-was = asiento como estaba
kit-length = Largo del elemento
kit-length-short = corto
kit-length-middle = mediano
kit-length-long = largo
kit-mount = Montaje del elemento
kit-option-element = { $rating }, { $length }, { $seat }
kit-option-expansion-tank = { $volume }, cargado a { $charge }
kit-cost = Piezas hasta ahora: ${ $dollars }
kit-cost-asked = Piezas hasta ahora: ${ $dollars }. Quieren que se les pregunte antes de pasar de ${ $most }.
kit-evidence = El paso { $step } es prueba
kit-evidence-count = { $count ->
    [0] Ningún paso marcado como prueba. Marque en el registro las lecturas que lo muestran.
    [one] 1 paso marcado como prueba.
   *[other] { $count } pasos marcados como prueba.
}
kit-out-since = fuera { $since }
kit-drop-suspect = Quitar: { $fault }

## Acciones en cada lugar

do-choose-place = Elija un lugar en el dibujo o en la lista: aquí se abren sus detalles y todo lo que se puede hacer allí.
do-senses = Con los sentidos
do-look = Mirar
do-listen = Escuchar
do-smell = Oler
do-covers = Tapas
do-covers-off = Quitar todo, hasta los tornillos
do-covers-on = Reponer todo
do-breakers = Disyuntores
do-lockout = Candado, etiqueta, prueba
do-portable = Calefactor portátil, 1500 W
do-behind-front = Detrás del frente
do-move-breaker = Mover un disyuntor a un espacio con las dos líneas
do-move = Mover
do-box-handle = Palanca del interruptor
do-box-lock = Candado y etiqueta en el interruptor
do-fuses = Fusibles
do-timer = Palanca del temporizador
do-box-clock = Reloj
do-set-clock = Poner el reloj en hora
do-writings = Leer
do-controls = Controles
do-flange = Brida del elemento y pared
do-pipes = Tubos y accesorios
do-fittings = Accesorios y piso
do-lever = Palanca
do-drain-valve = Válvula de drenaje
do-pressure = Presión
do-try-start = Probar el arranque
do-read-directory = Leer el directorio
do-correct-label = Corregir el directorio
do-write = Escribir
do-write-label = Escribir la etiqueta corregida
do-read-dials = { $layout ->
    [single-element] Leer el dial
    [electronic] Leer los ajustes
   *[other] Leer los dos diales
}
do-read-stamp = Leer el marcado del elemento
do-read-diagram = Leer el diagrama de cableado
do-press-reset = { $layout ->
    [off-peak] Oprimir los botones de restablecer
   *[other] Oprimir el botón de restablecer
}
do-seat = Apoyar plano el termostato
do-dial = Dial
do-set = Ajustar
do-turn = Girar
do-turn-dial = Girar el dial
do-feel-flange = Tocar la brida
do-wipe-flange = Secar la brida
do-thermometer-shell = Termómetro en la pared del tanque
do-thermometer-cold = Termómetro en el tubo frío
do-thermometer-relief = Termómetro en el tubo
do-thermometer-drain = Termómetro en el agua del drenaje
do-thermometer-tap = Termómetro
do-thermometer-point = Termómetro aquí
do-thermometer-hot = Termómetro en el tubo del niple marcado caliente
do-return-valve = Válvula del circuito de recirculación
do-thaw = Descongelar el tubo con aire tibio, sin llama
do-ventilate = Abrir las ventanas, sin llama
do-thermometer-return = Termómetro en el retorno del circuito
do-water-meter = Medidor de agua
do-main-valve = Llave de paso general
do-read-water-meter = Leerlo y observar su aguja chica
do-sample-hot = Un vaso sólo de caliente
do-sample-cold = Un vaso sólo de fría
do-look-at-anode = Desenroscar el ánodo y mirarlo
do-change-heater = Cambiar el calentador entero
do-part-pipes = Soltar los tubos
do-carry-helped = Sacarlo entre dos
do-carry-alone = Sacarlo a solas
do-join-dielectric = Unir los tubos, niples dieléctricos
do-join-bare = Unir los tubos, cobre sobre acero
do-reuse-relief = Poner la válvula de alivio vieja
do-stops = Llaves de paso cerradas
do-tank-charge = Carga del tanque de expansión
do-feel-relief-pipe = Tocar el tubo de descarga
do-feel-water = Mano en el agua
do-hose = Manguera en el drenaje
do-gauge = Manómetro puesto
do-read-gauge = Leer el manómetro
do-run = Dejar correr
do-point = Punto
do-pick-point = Elija un tornillo o un extremo de cable
do-touch = Tocar con la mano
do-non-contact = Detector sin contacto
do-clamp-wire = Pinza alrededor de este cable
do-land = Conectar
do-land-elsewhere = En otro tornillo
do-land-on-another = Conectar en otro tornillo
do-upper-plug = Conector del sensor superior en la tarjeta
do-lower-plug = Conector del sensor inferior en la tarjeta
do-upper-zone = Ajuste, zona superior
do-set-upper-zone = Ajustar la zona superior
do-lower-zone = Ajuste, zona inferior
do-set-lower-zone = Ajustar la zona inferior
do-cover-off = { $cover }: quitar
do-cover-on = { $cover }: reponer
do-breaker-on = Disyuntor { $slot } encendido
do-breaker-off = Disyuntor { $slot } apagado
do-box-close = Cerrarlo
do-box-open = Abrirlo
do-pull-fuse = { $feed ->
    [neutral] Fusible fuera
   *[legs] Fusible de la { $leg } fuera
}
do-test-fuse = { $feed ->
    [neutral] Ohmios del fusible
   *[legs] Ohmios del fusible de la { $leg }
}
do-portable-leg = En un tomacorriente de la { $leg }
do-space = Disyuntor { $slot }
do-lock-and-tag = Candado y etiqueta en { $slot }
do-relabel = { $slot } alimenta: { $feeds }
do-shut = Cerrar
do-quarter = Un cuarto
do-half = La mitad
do-full = Del todo
do-feel = Tocar: { $fitting }
do-wipe = Secar: { $fitting }
do-lever-up = Levantar la palanca
do-lever-down = Soltar la palanca
do-bucket = A un balde, { $tap }
do-run-bucket = Dejar correr a un balde, { $tap }
do-red-here = Roja aquí
do-black-here = Negra aquí
do-lift = Desconectar: { $wire }
do-label = Etiquetar: { $wire }
do-remake = Recortar y rehacer, a mano: { $wire }
do-remake-torqued = Recortar y rehacer, al par de apriete: { $wire }
do-land-by-feel = Conectar en { $screw }, a mano: { $wire }
do-land-torqued = Conectar en { $screw }, al par de apriete: { $wire }
do-screw-torqued = { $screw }, al par de apriete
do-screw-by-feel = { $screw }, a mano

## El dibujo

sheet-drawing = Dibujo del trabajo
sheet-cold-valve = Llave de fría
sheet-main-valve = Llave general
sheet-relief-short = Válv. alivio
sheet-drain-short = Drenaje
sheet-van-short = Camioneta
sheet-all-shut = cerrados
sheet-sensor = sensor
sheet-slot = { $slot }  { $circuit } { $amps } A
sheet-slot-unread = { $slot }  etiqueta sin leer
sheet-inside-1 = adentro,
sheet-inside-2 = no se ve
sheet-hot-pipe-1 = Caliente
sheet-hot-pipe-2 = a la casa
sheet-box-switch-1 = Interruptor
sheet-box-switch-2 = c/ fusibles
sheet-box-timer = Reloj
sheet-box-relay-1 = Relé de la
sheet-box-relay-2 = compañía
sheet-relay = Relé
sheet-box-locked = con candado
sheet-box-closed = cerrado
sheet-box-open = abierto
sheet-shut = cerrada
sheet-open = abierta
sheet-part-open = abierta { $percent } %
sheet-upper-cover = { $layout ->
    [single-element] Tapa
   *[other] Tapa superior
}
sheet-lower-cover = Tapa inferior
sheet-handle = { $slot }: { $handle }
sheet-handle-locked = { $slot }: { $handle }, candado
sheet-cover-on = puesta
sheet-insulation-in = fuera, con aislante
sheet-shield-in = fuera, con protector
sheet-screws-bare = todo fuera
sheet-wires-lifted = { $count ->
    [one] 1 cable suelto
   *[other] { $count } cables sueltos
}
sheet-lever-up-runs = alzada, corre
sheet-lever-up = palanca arriba
sheet-relief-runs = sale agua
sheet-pipe-dry = tubo seco
sheet-no-relief = boca abierta
sheet-drain-runs = corre
sheet-drain-stands = abierto, seco
sheet-drain-shut = cerrado
sheet-loop = Retorno
sheet-pump-hums = bomba zumba
sheet-pump-rests = bomba parada
sheet-hose-on = con manguera
sheet-no-hose = sin manguera
sheet-tap-dry = { $tap }: seco
sheet-tap-spits = { $tap }: escupe
sheet-tap-runs = { $tap }: corre
sheet-tap-more = { $before }, { $next }
sheet-detail = Detalle: { $place }
sheet-on = { $cover }: en su lugar
tap-short-laundry = pila
tap-short-kitchen = cocina
tap-short-bath = bañera
tap-short-shower = ducha

title-customer = Cliente
title-load-center = Tablero
title-in-line-box = Caja intermedia
title-junction-box = Caja de conexiones
title-heater-top = Calentador, arriba
title-upper-compartment = { $layout ->
    [single-element] Compartimiento
   *[other] Compartimiento superior
}
title-lower-compartment = Compartimiento inferior
title-relief = Válvula de alivio
title-drain = Drenaje y piso
title-taps = Grifos
title-van = Camioneta

point-full = { $mark }, { $what }
point-end = extremo pelado de { $end }
point-labelled = Etiquetado
point-charred = Chamuscado
point-red-lead = Punta roja aquí
point-black-lead = Punta negra aquí
mark-shell = tanque
mark-pipe = tubo
mark-wire = cable en { $screw }
point-M1 = barra, línea 1
point-M2 = barra, línea 2
point-N = barra de neutro
point-G = barra de tierra
point-B1 = { $feed ->
    [neutral] disyuntor del calentador, tornillo de salida
   *[legs] disyuntor del calentador, tornillo de salida del polo 1
}
point-B2 = disyuntor del calentador, tornillo de salida del polo 2
point-S1 = { $feed ->
    [neutral] segundo disyuntor, tornillo de salida
   *[legs] segundo disyuntor, tornillo de salida del polo 1
}
point-S2 = segundo disyuntor, tornillo de salida del polo 2
point-X1 = { $feed ->
    [neutral] caja intermedia, tornillo de entrada del vivo
   *[legs] caja intermedia, tornillo de entrada de la línea 1
}
point-X2 = caja intermedia, tornillo de entrada de la línea 2
point-X3 = { $feed ->
    [neutral] caja intermedia, tornillo de salida del vivo
   *[legs] caja intermedia, tornillo de salida de la línea 1
}
point-X4 = caja intermedia, tornillo de salida de la línea 2
point-JA = { $feed ->
    [neutral] caja de conexiones, empalme del vivo
   *[legs] caja de conexiones, empalme de la línea 1
}
point-JB = { $feed ->
    [neutral] caja de conexiones, empalme del neutro
   *[legs] caja de conexiones, empalme de la línea 2
}
point-JC = caja de conexiones, empalme de tarifa reducida de la línea 1
point-JD = caja de conexiones, empalme de tarifa reducida de la línea 2
point-JG = caja de conexiones, tornillo de tierra
point-H1 = { $feed ->
    [neutral] limitador, tornillo de entrada del vivo
   *[legs] limitador, tornillo de entrada de la línea 1
}
point-H2 = { $feed ->
    [neutral] limitador, tornillo de salida del vivo
   *[legs] limitador, tornillo de salida de la línea 1
}
point-H3 = { $feed ->
    [neutral] limitador, tornillo de entrada del neutro
   *[legs] limitador, tornillo de entrada de la línea 2
}
point-H4 = { $feed ->
    [neutral] limitador, tornillo de salida del neutro
   *[legs] limitador, tornillo de salida de la línea 2
}
point-H5 = limitador inferior, tornillo de entrada de la línea 1
point-H6 = limitador inferior, tornillo de salida de la línea 1
point-H7 = limitador inferior, tornillo de entrada de la línea 2
point-H8 = limitador inferior, tornillo de salida de la línea 2
point-U1 = termostato superior, común
point-U2 = termostato superior, hacia el elemento superior
point-U3 = termostato superior, entrada del enclavamiento
point-U4 = termostato superior, hacia el termostato inferior
point-D1 = termostato inferior, entrada
point-D2 = termostato inferior, hacia el elemento inferior
point-UEa = elemento superior, tornillo conmutado
point-UEb = elemento superior, tornillo permanente
point-LEa = elemento inferior, tornillo conmutado
point-LEb = elemento inferior, tornillo permanente
point-K1 = tarjeta de control, entrada
point-K2 = tarjeta de control, retorno
point-K3 = tarjeta de control, hacia el elemento superior
point-K4 = tarjeta de control, hacia el elemento inferior
point-T1 = conector del sensor superior, terminal 1
point-T2 = conector del sensor superior, terminal 2
point-T3 = conector del sensor inferior, terminal 1
point-T4 = conector del sensor inferior, terminal 2
point-shell = metal desnudo del tanque
point-pipe = tubo desnudo de agua fría
point-wire = { $wire }, { $colour }
point-landed = En { $screw }
point-lifted = Fuera de su tornillo
point-loose = Quedó suelto entre otros sin etiqueta: no se ve cuál es
point-empty = Sin cable
colour-black = negro
colour-white = blanco
colour-red = rojo
colour-blue = azul
colour-green = verde
diagram-title = Diagrama de cableado de fábrica
diagram-list = Conexiones
diagram-wire = { $from }, con { $to }

## Entradas

page-doors-title = Una visita de servicio, en un calentador que se calcula
page-doors-lead = Dejarlo sin tensión y comprobarlo, hallar por lecturas lo único que está mal, cambiar esa pieza y ninguna otra, llenar antes de dar corriente, comprobar la reparación.
page-door-practise = Practicar por su cuenta
page-door-practise-about = Una visita tras otra, cada una sorteada de nuevo. Cada lectura se calcula a partir de la falla que hay.
page-door-code = Tengo un código o un archivo
page-door-code-about = De su instructor, o de alguien que quiere que trabaje la misma visita.
page-door-exam = Examen
page-door-exam-about = Una visita sin pistas. Su instructor abre después el repaso.
page-door-exam-open = Al examen
page-door-instructor = Instructor
page-door-instructor-about = Repartir prácticas como código, enlace u hoja; leer intentos, repetidos y verificados.
page-door-instructor-open = Al escritorio del instructor
page-choose = Elegir calentador, casa y falla
page-mode = Modo
page-choose-heater = Calentador
page-choose-household = Gente de la casa
page-choose-climate = Pueblo
page-choose-location = Dónde está
page-choose-day = Día del año
page-choose-leg-volts = Voltios a neutro
page-licence = Licencia del aprendiz
page-choose-fault = Falla
page-choose-level = Qué tan difícil
page-choose-family = Familia de fallas
page-choose-like = Se parece a
page-choose-second = Una segunda falla
page-second-none = Una sola falla
page-second-any = Cualquiera que vaya con ella
page-second-follows = Lo que lleva a ella o le sigue
page-choose-traps = Trampas
page-choose-limit = Límite en minutos simulados
page-choose-limit-note = Vacío para ninguno; de 5 a 1023. Es tiempo dentro de la simulación: pasa con cada acción y se detiene mientras el aprendiz piensa.
page-choose-clock = Límite por reloj de pared, en minutos
page-choose-clock-note = Vacío para ninguno; de 1 a 1023. Lo lleva el aparato del aprendiz; un archivo no puede probarlo.
page-chance = Al azar
page-fault-chance = Al azar
page-fault-chance-note = Cualquiera que pueda darse en esta casa y que ninguna mirada sola delate, tan a menudo como la encuentra el oficio.
page-fault-named = Una de éstas
page-fault-named-note = Todas igual de probables.
page-faults-named = Fallas posibles
page-mode-coached = Guiada
page-mode-coached-note = Pistas cuando se piden. Una acción que haría daño se detiene, se explica y se cuenta.
page-mode-solo = Sin ayuda
page-mode-solo-note = Sin pistas. El mundo responde como lo haría. Repaso al final.
page-mode-exam = Examen
page-mode-exam-note = Sin pistas, y sin repaso hasta que se cargue su archivo de apertura.
page-practise = Ir a la visita
page-code = Código de práctica
page-code-open = Abrirlo
page-file-open = Abrir un archivo de práctica
page-file-unreadable = no se puede leer como texto, o es demasiado grande
page-learner = Su nombre o número
page-learner-note = Viaja en su intento y se queda en este aparato hasta que lo limpie.
page-term-limit = Tiempo de trabajo
page-term-clock = Tiempo de reloj
page-minutes = { $minutes ->
    [one] 1 min
   *[other] { $minutes } min
}
page-start = Empezar
page-start-anyway = Abandonarla y empezar ésta
page-gives-up = En este aparato hay otra práctica en curso. Si empieza ésta, la otra se abandona para siempre.
page-back = Atrás
page-to-doors = A la primera página
page-link-wrong = Este enlace no sirve
page-resume = Seguir con ella
page-resume-debrief = A su repaso
page-resume-under-way = { $mode } en curso: en el trabajo son las { $clock }, { $steps ->
    [0] todavía sin hacer nada
    [one] una acción hecha
   *[other] { $steps } acciones hechas
}.
page-resume-ended = { $mode }, terminada a las { $clock } tras { $steps ->
    [one] una acción
   *[other] { $steps } acciones
}.
page-copy = Copiar
page-copied = Copiado.
page-selected = Seleccionado: cópielo con el teclado o dejando el dedo puesto.

## Examen

page-exam-lead = Escriba el código que le dieron, o abra el archivo de práctica.
page-exam-not = Esa práctica no es un examen. Ábrala desde la primera página.
page-expect-one-call = Una visita de servicio, desde el timbre hasta la entrega. Nada peligroso se le oculta: el mundo responde como lo haría.
page-expect-licence = Usted trabaja como: { $licence }. De ahí se sigue cuál es el remedio correcto, y dónde parar y llamar.
page-expect-no-hints = Sin pistas ni instructor al lado.
page-expect-limit = Tiene { $minutes } minutos simulados. Pasan con cada acción, no mientras piensa.
page-expect-clock = Tiene { $minutes } minutos en el reloj de este aparato, desde que empiece. Recargar la página no lo detiene.
page-expect-reload = Cada acción se guarda en este aparato. Si la página se cierra, ábrala otra vez y siga.
page-expect-hand-in = Al final guarda su intento y lo entrega.
page-expect-no-debrief = Sin puntaje ni repaso hasta que su instructor lo abra.
page-clock-left = { $minutes ->
    [one] Queda 1 min en el reloj
   *[other] Quedan { $minutes } min en el reloj
}
page-exam-over = El examen terminó
page-exam-over-lead = Entregue ahora su intento. El repaso queda cerrado hasta que su instructor le dé el archivo de apertura.
page-opening = Abrir el repaso
page-opening-about = Con el archivo de apertura de su instructor.
page-opening-load = Cargar el archivo de apertura
page-opening-other = Este archivo abre otro examen.
page-hand-in = Su intento
page-hand-in-about = { $learner }, { $acts ->
    [one] una acción
   *[other] { $acts } acciones
}. El archivo contiene su nombre, la práctica y lo que hizo; todo lo demás se calcula de nuevo a partir de eso.
page-no-name = Sin nombre
page-save-attempt = Guardar el intento como archivo
page-save-failed = El navegador no quiso guardar un archivo. Copie el texto en su lugar.
page-as-text = O copiarlo como texto
page-attempt-text = Intento como texto

## Repaso

debrief-title = Repaso
page-dealing = Preparando el ejercicio: la familia vive su semana …
page-stop = Detener
page-waiting = Pasa el tiempo …
page-stopped = Detenido.
page-go-on = Continuar
debrief-folding = Repitiendo sus acciones …
debrief-folding-would = Repitiéndolo con cada una de las otras fallas …
debrief-not-ended = El trabajo todavía no terminó. Entréguelo, o pare y llame, para leer el repaso.
debrief-nothing = En este aparato no hay ninguna práctica terminada.
debrief-no-acts = No se hizo nada.
debrief-again = Trabajarla otra vez
debrief-from-here = Trabajarla otra vez desde aquí
debrief-from-here-about = Quedan las acciones hasta esta; lo que sigue se hace de nuevo, como práctica. El registro lo dice.
debrief-print = Imprimir el informe de servicio
debrief-next = Otra práctica
debrief-accounts = Cuatro cuentas
debrief-clean-safety = Nadie salió herido ni corrió riesgo.
debrief-clean-finding = Hallazgo correcto, con pruebas que lo distinguen de los demás.
debrief-clean-repair = El remedio correcto, y nada cambiado en vano.
debrief-clean-finish = Todo quedó como debe estar.
debrief-of = de { $of }
debrief-kept = { $count ->
    [one] Una observación sin costo
   *[other] { $count } observaciones sin costo
}
debrief-why = Por qué importa.
debrief-right = Lo que habría sido correcto.
debrief-go-to = { $clock } · { $act }
debrief-verdict = Veredicto
debrief-fault = Qué estaba mal
debrief-fault-at = { $fault } – { $stage }
debrief-second-fault = Y además
debrief-remedy = Qué lo arregla
debrief-finding = Lo que usted escribió
debrief-no-finding = No se escribió ningún hallazgo.
debrief-ending = Cómo terminó
debrief-customer = Lo que recibe el cliente
debrief-traces = También ahí, inofensivo
trace-streak = El hilo seco de óxido en la cubierta: de una fuga arreglada hace mucho. Uno mojado sería otra cosa.
trace-soot = El hollín viejo detrás de la tapa: de una unión rehecha hace mucho. Un cable quemado sería otra cosa.
trace-lime = La costra seca de sarro en el tubo de descarga: la dejó el agua de hace años. Lo que gotea hoy sería otra cosa.
trace-condensate = El tubo fino que gotea junto al calentador: agua del aire, del equipo de aire acondicionado. Nada de ella sale del calentador.
debrief-learner = Aprendiz
debrief-code = Práctica
debrief-report = Informe de servicio
debrief-call = Visita de servicio
debrief-call-at = { $call }, { $street }, { $town }; todo inventado
debrief-hours = Horas de trabajo
debrief-hours-from = de { $from } a { $until }
debrief-plate = { $size }, { $supply }, { $elements }
debrief-headline = Visita de servicio { $call } · { $street } · { $fault } · { $ending }
debrief-right-call = Dejarlo seguro, parar y llamar a { $whom }: el resto está más allá de esta licencia. { $remedy }
debrief-afterwards = Días después llaman otra vez: { $symptom }.
debrief-handed-on = Pasado a { $whom }, a quien le toca.
debrief-nothing-new = No dijo nada nuevo: cada sospecha abierta habría mostrado lo mismo. Eso nunca se descuenta.
debrief-ruled-out-many = Descartó { $count } sospechas.
debrief-ruled-out = Descartó: { $faults }.
debrief-end-handed-over = Entregado
debrief-end-called = Se paró, y se llamó a { $whom }
debrief-end-injured = Terminó por una lesión
debrief-end-time-out = Se acabó el tiempo simulado
debrief-end-clock-out = Se acabó el reloj de la página (sin prueba)
debrief-end-none = Sin terminar
debrief-cured = Reparado: lo que estaba mal quedó bien.
debrief-not-cured = Sin reparar: lo que estaba mal sigue ahí.
debrief-tank = { $temperature } arriba en el tanque al irse.
debrief-time = { $time } de trabajo.
debrief-bill = Piezas por ${ $cost }.
debrief-no-bill = Ninguna pieza que pagar.
debrief-drawing = Agua en el tanque, corriente y tiempo a lo largo de { $steps } acciones. La lista de acciones dice lo mismo en palabras.
debrief-top = arriba
debrief-water = agua en el tanque
debrief-current = corriente en los cables
debrief-tap = grifo
debrief-leg = { $feed ->
    [neutral] vivo
   *[legs] línea { $leg }
}
debrief-neutral = neutro
debrief-temperatures = temperaturas
debrief-heat = calor de los elementos
debrief-strip = El trabajo, momento por momento
debrief-arrival = Al llegar, antes de la primera acción.
debrief-figures = Cifras a las { $clock }
debrief-table = Las acciones marcadas, en una tabla
debrief-act = Tras la acción
debrief-at-top = Agua arriba
debrief-at-tap = Agua en el grifo
debrief-control-upper = Control superior
debrief-control-lower = Control inferior
debrief-element-upper = Elemento superior
debrief-element-lower = Elemento inferior
debrief-element-upper-1 = Elemento
debrief-element-upper-2 = superior
debrief-element-lower-1 = Elemento
debrief-element-lower-2 = inferior
debrief-element-only = Elemento
debrief-only-element = elem.
debrief-only-control = control
debrief-fill = Tanque lleno al
debrief-pressure = Presión
debrief-section = Dentro del calentador a las { $clock }
debrief-off = apagado
debrief-air = aire
debrief-ladder = El circuito a las { $clock }
debrief-ladder-dead = sin tensión
debrief-ladder-live = con tensión a tierra
debrief-ladder-runs = lleva corriente
debrief-ladder-heats = { $element }: lleva { $amps }.
debrief-ladder-waits = { $element }: con tensión, pero sin corriente.
debrief-ladder-off = { $element }: sin tensión en los dos tornillos.
debrief-ladder-shell = { $element }: { $amps } se fugan a su vaina.
debrief-ladder-lifted = Levantado: { $end }.
debrief-ladder-astray = Fuera de su lugar: { $end }, ahora en { $screw }.
debrief-ladder-breaker = Disy. { $slot }
debrief-ladder-box = Caja
debrief-ladder-relay = Relé
debrief-ladder-limit = Limitador
debrief-ladder-board = Tarjeta
debrief-ladder-closed = cerrado
debrief-ladder-open = abierto
debrief-ladder-whole = hilo entero
debrief-ladder-broken = hilo roto
debrief-ladder-powered = alimentada
debrief-ladder-live-short = viva, 0 A
debrief-phase-people = gente
debrief-phase-look = mirar
debrief-phase-safe = asegurar
debrief-phase-measure = medir
debrief-phase-repair = reparar
debrief-phase-water = agua
debrief-phase-wait = esperar
debrief-moments = Momentos de los que hablan las cuentas
debrief-inspector = Una acción
debrief-before = La acción anterior
debrief-after = La acción siguiente
debrief-step-of = acción { $step } de { $last }
debrief-not-charged = Nada descontado por esta acción.
debrief-had-it-been = Si hubiera sido …
debrief-more = y { $count ->
    [one] una más
   *[other] { $count } más
}
debrief-alike = lo mismo
debrief-steps = Cada acción
debrief-sections = Secciones
debrief-tab-account = Cuentas
debrief-tab-inside = Adentro
debrief-tab-steps = Acciones
debrief-tab-report = Informe

## Instructor

instructor-halves = Repartir o leer
instructor-hand-out = Repartir práctica
instructor-collect = Leer intentos
instructor-longer = Para un aprendiz con más tiempo de reloj, suba ese límite y reparta el código que aparece. Es la misma visita.
instructor-another = Sortear otra visita
instructor-seed = Visita { $seed }
instructor-sheet = Para repartir
instructor-link = Enlace
instructor-square = El enlace como código cuadrado para una cámara
instructor-print = Imprimir la hoja
instructor-save-drill = Guardar la práctica como archivo
instructor-save-opening = Guardar el archivo de apertura
instructor-opening-note = Conserve el archivo de apertura hasta que todos hayan entregado. Un aprendiz con más tiempo de reloj no necesita otro.
instructor-paper-title = Visita de servicio a un calentador de agua eléctrico
instructor-paper-open = Abra el enlace, o la página que le mostraron, y escriba el código.
instructor-paper-name = Escriba su nombre o número.
instructor-paper-work = Trabaje la visita: déjelo sin tensión y compruébelo, halle lo que está mal, arréglelo, compruebe la reparación.
instructor-paper-hand-in = Al final guarde su intento como archivo y entréguelo.
instructor-collect-about = Archivos o textos que entregaron los aprendices. Cada uno se repite en este aparato; no se envía nada a ninguna parte.
instructor-pick = Elegir archivos de intentos
instructor-paste = O pegar uno como texto
instructor-paste-add = Agregarlo
instructor-pasted = texto pegado
instructor-judging = { $judged } de { $total } repetidos …
instructor-judged = { $total ->
    [one] Un intento repetido.
   *[other] { $total } intentos repetidos.
}
instructor-bad = { $count ->
    [one] Un archivo no se pudo usar
   *[other] { $count } archivos no se pudieron usar
}
instructor-csv = Guardar la tabla (CSV)
instructor-clear = Vaciar la tabla
instructor-none = Todavía no hay intentos.
instructor-col-learner = Aprendiz
instructor-col-drill = Falla
instructor-col-mode = Modo
instructor-col-seal = Archivo
instructor-col-ending = Final
instructor-col-total = Total
instructor-col-minutes = Minutos
instructor-col-acts = Acciones
instructor-sealed = sellado
instructor-unsealed = sin sello
instructor-practice = { $carried ->
    [0] práctica: { $back } deshechas
   *[other] práctica: { $carried } acciones tomadas de antes, { $back } deshechas
}
instructor-open = Recorrerlo
instructor-back = Volver a la tabla
instructor-review = Intento de { $learner }
instructor-no-name = (sin nombre)
instructor-unsafe = Lo más común en la cuenta de seguridad, y lo que habría sido correcto
instructor-of-all = { $count } de { $total }
instructor-table = Intentos con sus cuentas

## Fuentes

atlas-link = Atlas de fallas
atlas-tag = Atlas de fallas
atlas-title = Atlas de fallas
atlas-lead = Cada falla de la simulación junto a la misma casa sana: lo que se ve, se oye y se mide, y qué se le parece más. Cada línea se recorre en la casa simulada al abrirla.
atlas-caution = Ayuda para practicar: en un calentador real mandan las instrucciones del fabricante, el código local y los límites de la licencia.
atlas-pairs = Qué fallas se distinguen entre sí
atlas-pairs-about = Cada par de fallas se puso en treinta casas de cada calentador que puede tener ambas, y se recorrió todo lo que hay para ver y leer. Cuadro lleno: se distinguen en todas las casas. Rombo: en todas menos una de treinta, o bien hay que cambiar la misma pieza. Triángulo: una reparación sirve para ambas. Cruz: no se distinguen. Sin marca: ninguna casa de la prueba tenía ambas.
atlas-pairs-alt = Una marca por cada par de fallas; lo que distingue a dos está en la página de cada falla.
atlas-shut = El atlas queda cerrado mientras dura un examen.
atlas-search = Buscar una falla
atlas-found = { $count ->
    [one] Una falla
   *[other] { $count } fallas
  }
atlas-all = Todas las fallas
atlas-in-error = Lo que suele cambiarse por error: { $part }.
atlas-beside = Sana y con falla, lado a lado
atlas-house = Una casa entre muchas: { $heater }. Otra casa da otras lecturas.
atlas-walking = Recorriendo la casa, sana y con esta falla …
atlas-act = Qué se hace
atlas-before = Antes
atlas-sound = Sana
atlas-faulty = Con esta falla
atlas-as-found = Tal como se encontró
atlas-cut = { $house }: el calentador en corte, { $top } arriba, { $bottom } abajo, { $heat } de calor
atlas-cut-after = Dentro del calentador, en ambas casas tras la misma acción: { $act }.
atlas-no-difference = En el calentador nada difiere de una casa sana: sólo las costumbres de la gente.
atlas-alike = Qué se le parece más
atlas-alike-about = Se recorre la misma casa con cada una de las otras fallas que caben en ella. En una computadora lenta tarda un rato, y se puede detener.
atlas-find = Recorrer las otras fallas
atlas-stop = Detener
atlas-progress = { $done } de { $total } fallas recorridas
atlas-twin = Se parece a
atlas-by = Se distingue por
atlas-here = Aquí
atlas-there = Allí
atlas-course = A medida que empeora
atlas-stage-early = Incipiente
atlas-stage-well-on = Avanzada
atlas-stage-gone = Muy avanzada
atlas-one-repair = Nada: una misma reparación sirve para las dos
sources-link = Fuentes
sources-tag = Fuentes
sources-title = ¿De dónde sale esto?
sources-lead = { $count } números forman el calentador, la casa y su gente. Cada uno dice de dónde sale y cuánto se puede confiar en él. Sus nombres y sus fuentes están en inglés, como los documentos.
sources-caution = Cifras de esta simulación, no consejos para un trabajo. En un calentador real mandan su placa, los papeles del fabricante y el código local.
sources-search = Buscar nombres, valores y documentos
sources-search-example = relief, 150 psi, IEC 60479
sources-kind = Clase de fuente
sources-kind-all = Todas
sources-kind-all-about = Cada número.
sources-kind-published = Publicado
sources-kind-published-about = Visto en el documento que se nombra.
sources-kind-computed = Calculado
sources-kind-computed-about = Sacado de los datos que se nombran.
sources-kind-common-practice = Práctica común
sources-kind-common-practice-about = Usual en el oficio; ningún documento lo dice.
sources-kind-memory = De memoria
sources-kind-memory-about = Falta consultarlo en el documento que se nombra.
sources-kind-model = Decisión del modelo
sources-kind-model-about = Elegido para esta simulación, por la razón que se da.
sources-kind-invented = Inventado
sources-kind-invented-about = Hecho para practicar: gente, lugares, equipos.
sources-found =
    { $count ->
        [one] { $count } número
       *[other] { $count } números
    }
sources-none = Nada coincide. Quite una palabra de la búsqueda, o elija Todas.
sources-plate = ¿De dónde salen estas cifras?
sources-score = ¿De dónde salen los números de esta falla?
sources-group-bench-person = El cuerpo: corriente, calor, tiempo
sources-group-bench-instrument = Instrumentos: rangos y exactitud
sources-group-bench-minutes = Cuánto tarda cada acción
sources-group-bench-reduce = Lo que dicen manos, ojos y oídos, y lo que exige una acción
sources-group-bench-view = Lo que se ve en el dibujo
sources-group-bench-prices = Lo que cuestan las piezas
sources-group-solver-hydraulic = Presión, válvulas, recipientes
sources-group-solver-tank = Capas de agua: conducción y mezcla
sources-group-solver-skin = La piel y la quemadura que sufre
sources-group-solver-water = El agua misma
sources-group-plant-branch = Circuitos: disyuntores y conductores
sources-group-plant-conductor = Conductores: calibre, metal, calor
sources-group-plant-installation = Cómo está instalado un calentador
sources-group-plant-in_line = Cajas intermedias: interruptores, temporizadores, relés
sources-group-plant-location = Dónde están los calentadores
sources-group-plant-layout = Formas de cablear un calentador
sources-group-plant-wire = Cables y conexiones
sources-group-plant-build = Una casa sana
sources-group-plant-climate = Lugares y sus redes de agua
sources-group-plant-controls = Termostatos, limitador, disyuntores, elementos, conexiones
sources-group-plant-electrical = El cableado y sus resistencias
sources-group-plant-fault = Fallas: con qué frecuencia, qué tan graves
sources-group-plant-handiwork = Trabajo mal hecho que otros dejaron
sources-group-plant-heater = Calentadores y sus placas
sources-group-plant-household = Gente: costumbres, paciencia, memoria
sources-group-plant-named = Nombres en los archivos
sources-group-plant-parts = Piezas tal como se montan
sources-group-plant-points = Cables y lugares que tocar
sources-group-plant-supply = Acometidas y tableros
sources-group-plant-thermal = Calor y agua en el tanque
sources-group-plant-waterworks = Tubos, válvulas, grifos

## Daños

harm-shock = Descarga: { $volts } { $path } empujan { $current } a través de { $impedance } durante { $time }: { $zone }.
harm-shock-time = Pasados { $time } el corazón corre peligro.
harm-shock-gfci = Un interruptor de falla a tierra (GFCI), donde protege el circuito, abre a los { $time }.
path-hand-hand = de mano a mano
path-left-hand-feet = de la mano izquierda a los pies
path-right-hand-feet = de la mano derecha a los pies
path-hands-feet = de las dos manos a los pies
path-left-hand-trunk = de la mano izquierda al tronco
path-right-hand-trunk = de la mano derecha al tronco
path-foot-foot = de pie a pie
curve-c1 = Hasta uno de cada veinte corazones fibrila con esta corriente y este tiempo.
curve-c2 = Hasta la mitad de los corazones fibrila con esta corriente y este tiempo.
curve-c3 = Más de la mitad de los corazones fibrila con esta corriente y este tiempo.
zone-imperceptible = demasiado poco para sentirla
zone-perceptible = se siente como cosquilleo
zone-let-go-at-risk = algunas personas ya no pueden soltarse
zone-beyond-let-go = la mayoría ya no puede soltarse
zone-fibrillation = el corazón puede fibrilar
harm-burn = { $source } a { $temperature } sobre la piel durante { $time }: { $degree } ({ $who }).
burn-source-water = Agua
burn-source-splash = Una salpicadura
burn-source-steam = Vapor
burn-source-metal = Metal
degree-none = sin quemadura
degree-first = piel roja y dolorida
degree-second = una quemadura con ampollas
degree-third = una quemadura que atraviesa la piel
who-technician = usted
who-adult = un adulto de la casa
who-child = un niño de la casa
harm-flood = { $volume } de agua en el piso.
harm-element = El elemento { $level } se quemó: { $power } en el aire, perdido a los { $time }.
harm-arc = Un arco: { $volts } empujaron { $current } por un cortocircuito.
harm-meter = El medidor recibió { $volts } en un rango que no lo aguanta. Su fusible se quemó.
harm-board = El probador de aislamiento le puso { $volts } a la tarjeta de control. Sus relés ya no cierran.
harm-gas = Salieron { $volume } de gas por el grifo antes que el agua. Tras un largo reposo es hidrógeno, y arde.
harm-steam = Agua a { $water } bajo { $pressure } se volvió vapor de golpe.
harm-overpressure = El tanque llegó a { $pressure }; su placa permite { $working }.
harm-joint = Una conexión convirtió { $power } en calor durante { $time }.
harm-lukewarm = El tanque quedó a { $temperature }, donde crecen los gérmenes.
harm-strain = Espalda lastimada bajo { $mass }.

# Qué hacer. La pantalla nunca dice que un toque real sería inofensivo.
caution-shock = No toque a quien la corriente tenga sujeto: corte primero la corriente, luego llame una ambulancia, dé RCP si no respira, y que le revisen el corazón después.
caution-shock-felt = Un cosquilleo es un aviso: déjelo, bloquee todas las fuentes y averigüe por qué el metal tiene tensión. El mismo toque con la piel mojada puede matar.
caution-burn = Enfríe bajo agua corriente fresca durante 20 minutos, y lleve al médico todo lo que haga ampolla. Avise a la gente y pruebe el agua antes de que toque la piel.
caution-burn-child = Enfríe bajo agua corriente fresca durante 20 minutos y lleve al niño al médico. Los niños se queman en más o menos la mitad del tiempo.
caution-flood = Cierre la válvula de agua fría, no pise suelo mojado cerca de partes con tensión, y seque lo empapado.
caution-element = Llene hasta que un grifo caliente salga lleno antes de dar corriente: un elemento en el aire dura cerca de medio minuto.
caution-arc = Trabaje sin tensión. Un arco quema piel y ojos aunque ninguna corriente pase por el cuerpo.
caution-meter = Revise entrada, dial y puntas antes de tocar con ellas. Ohmios sólo en un circuito comprobado sin tensión.
caution-board = Desconecte los cables de los elementos antes de probar aislamiento, y nunca pruebe con electrónica conectada.
caution-gas = Abra una ventana y déjelo salir. Ni llama, ni cigarro, ni interruptor cerca del grifo hasta que salga agua a chorro lleno, sin aire.
caution-steam = No deje entrar a nadie y no toque la válvula. Corte la corriente sólo si llega al tablero sin pasar junto al tanque, y pida ayuda.
caution-overpressure = Nunca deje un tanque sin una válvula de alivio que funcione y sin un lugar donde el agua se expanda.
caution-joint = Recorte hasta cobre limpio y haga la conexión con el par marcado: una conexión caliente puede incendiar lo que la rodea.
caution-lukewarm = Guarde el agua bastante caliente y mézclela en el grifo; las reglas locales dicen cuánto.
caution-strain = Dos personas por calentador, o carretilla y correas; con la espalda lastimada nadie sigue cargando.

## Reglas del puntaje: qué pasó, por qué importa, qué habría sido correcto

account-safety = Seguridad
account-finding = Hallazgo
account-repair = Reparación
account-finish = Acabado

rule-touched-live = Manos desnudas tocaron una parte con tensión: { $detail }.
rule-touched-live-why = La tensión de la casa a través de una mano puede parar un corazón. En un calentador real puede ser lo último que se haga.
rule-touched-live-right = Bloquear todas las fuentes, comprobar el medidor, comprobar cada tornillo sin tensión contra una tierra comprobada, comprobar otra vez el medidor, y entonces tocar.
rule-shock = Alguien recibió una descarga que hiere.
rule-shock-why = Pasada la corriente de soltar, la mano se cierra sobre lo que la hiere, y un segundo puede ser demasiado.
rule-shock-right = Comprobar que no hay tensión antes de meter la mano tras una tapa. Hasta entonces guantes y lentes, y sólo puntas de prueba.
rule-burn = Alguien se quemó: { $detail }.
rule-burn-why = { $burning-heat } atraviesan la piel en unos cinco segundos, { $safe-heat } tardan minutos.
rule-burn-right = Medir la temperatura antes de poner la mano, abrir agua caliente con la gente apartada, y enfriar el tanque antes de drenarlo.
rule-blast = El tanque soltó vapor o reventó.
rule-blast-why = Agua por encima de hervir y con presión es una bomba. Nadie debe estar cerca.
rule-blast-right = Cortar la corriente sólo si se llega al tablero sin pasar junto al tanque, todos afuera, llamar.
rule-energised-miswired = Se dio corriente con un cable en un tornillo ajeno: { $detail }.
rule-energised-miswired-why = Un cable cruzado puede poner tensión en el tanque, saltarse el limitador o encender los dos elementos.
rule-energised-miswired-right = Etiquetar cada cable antes de soltarlo, conectarlo según el diagrama, revisarlo antes de dar corriente.
rule-worked-live = Se trabajó en una parte con tensión, con guantes y lentes puestos: { $detail }.
rule-worked-live-why = Los guantes hacen que se sobreviva a un descuido, no que el trabajo se permita. La regla es trabajar sin tensión.
rule-worked-live-right = Hallar la fuente, bloquearla, comprobar la ausencia de tensión.
rule-worked-unproved = Se trabajó antes de comprobar que no había tensión: { $detail }.
rule-worked-unproved-why = Esta vez no la tenía. Un disyuntor mal etiquetado, una segunda fuente o una punta rota lo habrían dejado vivo.
rule-worked-unproved-right = { $feed ->
    [neutral] Candado y etiqueta, medidor comprobado, de vivo a neutro, cada tornillo contra una tierra comprobada, medidor comprobado otra vez.
   *[legs] Candado y etiqueta, medidor comprobado, de línea a línea, cada tornillo contra una tierra comprobada en los dos compartimientos, medidor comprobado otra vez.
}
rule-ohms-live = Una prueba de ohmios o de aislamiento encontró un circuito con tensión.
rule-ohms-live-why = La lectura no significa nada, y el medidor puede fallar en la mano.
rule-ohms-live-right = Primero voltios. Ohmios sólo con la ausencia de tensión comprobada y los cables sueltos.
rule-ohms-unproved = Se midieron ohmios antes de comprobar que el circuito no tenía tensión: { $detail }.
rule-ohms-unproved-why = De haberla tenido, la lectura habría mentido y el medidor podría haber fallado.
rule-ohms-unproved-right = Primero comprobar que no hay tensión; luego ohmios.
rule-lacked-at = { $point }; { $missing }
rule-lacked-lock = una fuente no tenía candado y etiqueta propios
rule-lacked-household = no se había avisado a la gente de la casa
rule-lacked-meter = no se había comprobado el medidor en una fuente conocida
rule-lacked-legs = { $feed ->
    [neutral] no se había medido de vivo a neutro
   *[legs] no se había medido de línea a línea
}
rule-lacked-ground = no se había comprobado la tierra contra la que se midió
rule-lacked-screw = no se había medido cada tornillo contra una tierra comprobada
rule-lacked-meter-again = no se había comprobado otra vez el medidor
rule-stopped-by-coach = El instructor tuvo que detener esto antes de que hiciera daño.
rule-stopped-by-coach-why = En una visita real nadie está a su lado.
rule-stopped-by-coach-right = Lea lo que dijo ahí el instructor, y búsquelo antes de esa acción la próxima vez.
rule-arc = Se hizo un cortocircuito.
rule-arc-why = Un cable o una herramienta entre partes con tensión lanza cobre fundido.
rule-arc-right = Sin tensión y comprobado antes de mover un cable.
rule-flood = Se soltó agua donde hace daño.
rule-flood-why = Un tanque guarda bastante para atravesar un techo.
rule-flood-right = Válvula de agua fría cerrada, manguera a un desagüe seguro, el tanque por debajo de la abertura, y entonces abrirla.
rule-no-protection = Se tomó una lectura con tensión sin guantes ni lentes de seguridad.
rule-no-protection-why = Hasta comprobarlo, todo lo que está tras una tapa cuenta como con tensión.
rule-no-protection-right = Guantes y lentes puestos antes de quitar una tapa, hasta comprobar otra vez el medidor.
rule-household-not-told = Se cortó la corriente o el agua antes de avisar a la casa.
rule-household-not-told-why = Quien no lo sabe vuelve a encender cosas, o abre un grifo en mal momento.
rule-household-not-told-right = Decirles qué se corta, por cuánto tiempo, y que no toquen nada.
rule-somebody-reset = Alguien volvió a encender el disyuntor.
rule-somebody-reset-why = Un disyuntor sólo apagado es de cualquiera que pase.
rule-somebody-reset-right = Candado y etiqueta propios en el disyuntor, la llave en el bolsillo.
rule-energised-open = Se dio corriente con tapas quitadas o cables sueltos.
rule-energised-open-why = Tornillos desnudos con tensión a la altura de la rodilla, en una casa con gente.
rule-energised-open-right = Cables conectados al par de apriete, aislamiento, protectores y tapas puestos, y entonces la corriente.
rule-miswired = Se conectó un cable en un tornillo que no es el suyo: { $detail }.
rule-miswired-why = El calentador puede parecer que funciona y calentar de más, o con un solo elemento, o saltarse su limitador.
rule-miswired-right = Conectar cada cable según su etiqueta y el diagrama dentro de la tapa.
rule-lifted-alone = Una sola persona cargó un calentador.
rule-lifted-alone-why = Pesa el doble de lo que una persona debe levantar, y el agua que queda se mueve.
rule-lifted-alone-right = Pedir otro par de manos antes de soltar los tubos.
rule-hot-discharge = Corrió agua a { $detail } sin nada que apartara a la gente.
rule-hot-discharge-why = Quema la piel en menos de dos minutos, y un poco más caliente en segundos.
rule-hot-discharge-right = Avisar a la casa, manguera a un lugar seguro, primero el termómetro.
rule-left-hot = Se dejó puesto a { $detail }.
rule-left-hot-why = Un niño o un anciano no se aparta a tiempo.
rule-left-hot-right = Todo puesto a { $safe-heat }; para algo más caliente hace falta una válvula mezcladora.

rule-no-finding = No se escribió ningún hallazgo.
rule-no-finding-why = Una reparación sin hallazgo es una adivinanza, aunque funcione.
rule-no-finding-right = Escribir lo único que está mal y las lecturas que lo muestran, antes de reparar.
rule-wrong-finding = El hallazgo fue: { $detail }.
rule-wrong-finding-why = Lleva a cambiar algo que está sano.
rule-wrong-finding-right = Buscar la lectura que sólo una falla puede dar.
rule-second-not-found = Había dos cosas mal; no se halló: { $detail }.
rule-second-not-found-why = Un calentador que se comprueba después de la primera reparación muestra que algo sigue mal; si se deja así, volverán a llamar.
rule-second-not-found-right = Comprobar la reparación. Lo que siga leyendo mal es un hallazgo aparte: lecturas, hallazgo, reparación.
rule-wrong-cause = La pieza correcta por otra causa: { $detail }.
rule-wrong-cause-why = La pieza se cambia, pero lo que hay que comprobar después depende de cómo falló.
rule-wrong-cause-right = Medir el contacto en los dos sentidos, caliente y frío.
rule-no-evidence = El hallazgo no nombra pruebas.
rule-no-evidence-why = Nadie puede verificarlo, ni usted la semana que viene.
rule-no-evidence-right = Nombrar las lecturas que lo muestran.
rule-evidence-leaves-others = Las pruebas serían iguales con: { $detail }.
rule-evidence-leaves-others-why = Lo marcado no los distingue; una lectura más, tomada y marcada, sí.
rule-evidence-leaves-others-right = Antes de escribirlo, preguntarse qué más daría estas lecturas, y tomar y marcar la que cambia.
rule-finding-after-repair = La reparación llegó antes que el hallazgo escrito.
rule-finding-after-repair-why = Escrito después registra lo que se hizo, no lo que se halló.
rule-finding-after-repair-right = Lecturas, hallazgo, y luego la reparación.

rule-not-cured = La queja vuelve.{ $detail }
rule-not-cured-why = La casa siguió unos días después del trabajo, y aparece el mismo problema.
rule-not-cured-right = Cambiar la pieza que las lecturas nombran, o llamar a quien pueda hacerlo, y comprobar la reparación antes de irse.
rule-called-without-need = Se llamó a { $detail } para un trabajo que la licencia cubre.
rule-called-without-need-why = El cliente espera y paga dos veces.
rule-called-without-need-right = Hacer lo que su licencia y el código local permiten. Parar donde ellos paran.
rule-beyond-licence = Trabajo más allá de la licencia: { $detail }.
rule-beyond-licence-why = La ley local decide quién puede hacerlo, y el seguro la sigue.
rule-beyond-licence-right = Dejarlo seguro, parar, llamar a quien tenga la licencia, decir lo que halló.
rule-wrong-words = No se le dijo al cliente de qué se trataba.
rule-wrong-words-why = Nada está roto; las palabras son el remedio.
rule-wrong-words-right = Explicar lo que se midió y lo que ayudaría.
rule-cured-by-luck = Funciona, pero no por lo que se halló.
rule-cured-by-luck-why = La próxima vez adivinar cuesta una pieza y un día.
rule-cured-by-luck-right = Dejar que las lecturas nombren la pieza.
rule-changed-in-vain = Se cambió una pieza sana: { $detail }.
rule-changed-in-vain-why = El cliente la paga, y la falla sigue sin hallarse.
rule-changed-in-vain-right = Probar la pieza misma, con los cables sueltos, antes de cambiarla.
rule-wrong-rating = No corresponde a la placa: { $detail }.
rule-wrong-rating-why = Un voltaje o una potencia equivocados calientan lento, disparan o se queman antes; un elemento corto trabaja más caliente bajo el sarro.
rule-wrong-rating-right = Leer la placa y el marcado; igualar voltios, vatios, largo, montaje y tamaño.
rule-put-in-amiss = Instalado como no debe ser: { $detail }.
rule-put-in-amiss-why = Una válvula de alivio vieja puede no abrir más; el cobre sobre acero desnudo se come el niple; un termostato separado del tanque abre tarde, y el agua quema.
rule-put-in-amiss-right = Válvula de alivio nueva con tubo de diámetro completo; niples dieléctricos entre acero y cobre; termostato bien apoyado.
rule-burnt-element = El elemento { $detail } se quemó en el aire.
rule-burnt-element-why = Sin agua alrededor, un elemento se pierde en medio minuto.
rule-burnt-element-right = Llenar hasta que un grifo caliente salga lleno, levantar la válvula de alivio, y luego la corriente.
rule-untorqued = Una conexión quedó sin su par de apriete: { $detail }.
rule-untorqued-why = Una conexión floja se calienta con carga y se carboniza.
rule-untorqued-right = Apretar al par marcado con un destornillador dinamométrico.
rule-wires-off = Un cable quedó fuera de su tornillo: { $detail }.
rule-wires-off-why = Puede tocar el tanque, y el calentador no funciona.
rule-wires-off-right = Conectar cada cable antes de poner las tapas.

rule-not-finished = El trabajo no se llevó a término.
rule-not-finished-why = Otro se encuentra un calentador a medias.
rule-not-finished-right = Entregarlo, o parar dejándolo seguro y llamar.
rule-energised-not-full = Se dio corriente antes de que el tanque estuviera lleno.
rule-energised-not-full-why = El elemento superior es el último en cubrirse, y en seco dura medio minuto.
rule-energised-not-full-right = Grifo caliente abierto, llenar hasta que salga lleno, válvula de alivio levantada, y luego la corriente.
rule-not-purged = Se dio corriente antes de que un grifo caliente saliera lleno.
rule-not-purged-why = El aire de arriba deja seco el elemento superior.
rule-not-purged-right = Abrir el grifo caliente más alto y el más cercano hasta que el chorro salga lleno y deje de escupir.
rule-relief-not-lifted = Después de llenar no se levantó la válvula de alivio.
rule-relief-not-lifted-why = Agua a chorro lleno, sin aire, muestra que arriba está lleno, y que la válvula funciona.
rule-relief-not-lifted-right = Apartarse, levantarla un momento, ver agua a chorro lleno, sin aire, ver que cierra.
rule-not-measured = No se midió ningún cable con pinza al volver la corriente.
rule-not-measured-why = Sólo la corriente prueba que un elemento calienta.
rule-not-measured-right = Tapa puesta, pinza en un cable: vatios entre voltios, y nada una vez satisfecho.
rule-not-run-to-cut-out = No se siguió observando el calentador al volver la corriente.
rule-not-run-to-cut-out-why = Un contacto soldado o una resistencia a tierra sólo se muestra con el agua caliente.
rule-not-run-to-cut-out-right = Dejarlo llegar a su corte, y ver que ya no hay corriente: 0 A.
rule-leak-not-looked-for = Después de llenar nadie buscó fugas.
rule-leak-not-looked-for-why = Un empaque que suda en frío es una inundación por la mañana.
rule-leak-not-looked-for-right = Secar las uniones, mirar otra vez en frío y una vez más en caliente.
rule-cost-not-agreed = Instalado sin que el cliente aceptara el costo: { $detail }.
rule-cost-not-agreed-why = Esta gente quería que se le preguntara antes de gastar tanto.
rule-cost-not-agreed-right = Pregunte cuánto puede costar, diga la suma y obtenga el acuerdo antes de abrir una pieza.
rule-hazard-unreported = Visto y no dicho: { $detail }.
rule-hazard-unreported-why = No es la falla, y puede herir a alguien más adelante; el cliente no sabe qué mirar.
rule-hazard-unreported-right = Informar lo que está mal aparte de la falla, y dejarlo a quien pueda repararlo.
rule-reported-amiss = Informado, y no es así: { $detail }.
rule-reported-amiss-why = Un cliente al que le hablan de peligros que no hay los paga.
rule-reported-amiss-right = Informar lo que se vio o se midió.
rule-told-amiss = Se respondió mal al cliente: { $detail }
rule-told-amiss-why = La gente hace lo que dice el técnico.
rule-told-amiss-right = Decir lo que es cierto; lo que no se sabe, dejarlo abierto.
rule-dials-left = Quedó puesto por encima de { $safe-heat }, o desigual arriba y abajo.
rule-dials-left-why = Ajustes desiguales dan un resultado raro; altos, queman.
rule-dials-left-right = Todo puesto a { $safe-heat }.
rule-covers-off = Quedaron tapas sin poner.
rule-covers-off-why = Tornillos con tensión al alcance, y termostatos que sienten el cuarto en vez del tanque.
rule-covers-off-right = Aislamiento, protector, tapa, frente del tablero, tapa de la caja.
rule-power-left-off = La corriente quedó cortada.
rule-power-left-off-why = El cliente no tiene agua caliente, y la reparación no está comprobada.
rule-power-left-off-right = Candado fuera, disyuntor encendido, medir, observar.
rule-lock-left-on = Quedó un candado puesto.
rule-lock-left-on-why = Sólo su dueño puede quitarlo, y el dueño se fue.
rule-lock-left-on-right = El propio candado, quitado con la propia mano antes de entregar.
rule-left-open = Una válvula, un grifo, la manguera, la palanca o el manómetro no se dejaron en su lugar.
rule-left-open-why = La casa no queda como debe usarse.
rule-left-open-right = Llave de paso general y válvula de agua fría abiertas, grifos y drenaje cerrados, manguera y manómetro fuera, palanca abajo.
rule-wires-unlabelled = Se desconectó sin etiqueta: { $detail }.
rule-wires-unlabelled-why = Sueltos juntos, una hora después nadie los distingue. Cambiados de tornillo pueden dejar frío un elemento, calentarlo más allá de su termostato, o poner en corto la alimentación y disparar el disyuntor.
rule-wires-unlabelled-right = Etiquetar o fotografiar cada extremo antes de soltarla.
rule-customer-not-told = No se le dijo al cliente el resultado.
rule-customer-not-told-why = Él abre el grifo después, y va a salir caliente.
rule-customer-not-told-right = Qué se halló, qué se hizo, qué vigilar, y que el agua se calienta.
rule-left-unsafe = Se paró y se llamó, pero quedó con tensión, abierto o con fuga.
rule-left-unsafe-why = La siguiente persona, o un niño, lo encuentra así.
rule-left-unsafe-right = Corriente bloqueada, tapas puestas, agua cerrada donde hay fuga, y luego llamar.
rule-no-ambulance = Alguien resultó herido y no se llamó a una ambulancia antes de hacer otra cosa.
rule-no-ambulance-why = Una descarga puede alterar el ritmo del corazón horas después, y una quemadura profunda puede doler menos de lo que es.
rule-no-ambulance-right = Corte la corriente antes de tocar a nadie, cierre el agua y llame a la ambulancia. El calentador espera.

detail-call-first = Para esto hace falta { $whom }.

## Dichos descuidados del oficio, y lo que es cierto

debrief-saying-title = Un dicho que aquí le costó
debrief-saying-said = «{ $said }»
debrief-saying-step = Ver la acción { $step }
belief-bottom-first = El elemento de abajo va primero.
belief-bottom-first-truth = Sólo cuando arriba ya está caliente. Un tanque frío arranca con el elemento superior; mientras ése esté abierto, al inferior nunca le llega nada.
belief-open-reads-nothing = Un elemento malo no lee nada.
belief-open-reads-nothing-truth = Un elemento abierto lee fuera de rango, OL. Cero ohmios sería un corto, que dispara el disyuntor.
belief-volts-so-it-works = Tiene 240 V, así que funciona.
belief-volts-so-it-works-truth = Un elemento abierto también tiene 240 V. Sólo la corriente, o los ohmios con los cables sueltos, muestra que conduce.
belief-leg-to-ground-is-a-fault = 120 V a tierra en un elemento son una falla a tierra.
belief-leg-to-ground-is-a-fault-truth = Es la línea que sigue conectada mientras el termostato está abierto. Una falla a tierra se ve en ohmios contra el tanque, con los cables sueltos.
belief-two-legs-are-240 = Las dos líneas leen 120 V, así que hay 240 V.
belief-two-legs-are-240-truth = No si las dos lecturas son de una misma línea: con la otra muerta, regresa a través de un elemento. Mida de línea a línea.
belief-ohms-from-a-table = 4500 W tienen que ser 11.6 ohmios.
belief-ohms-from-a-table-truth = Voltios al cuadrado entre vatios: 240 V y 4500 W son 12.8 ohmios. Sáquelo de la placa.
belief-legs-swapped = { $feed ->
    [neutral] Vivo y neutro se pueden cambiar.
   *[legs] Cambiar las líneas ahorra corriente.
}
belief-legs-swapped-truth = { $feed ->
    [neutral] Calienta igual, pero el termostato abre entonces el neutro: elemento y cables siguen con tensión contra el tanque.
   *[legs] No cambia nada: las dos líneas son iguales. Lo que cambia es que ahora un cable está en un tornillo que no es el suyo.
}
belief-bypass-the-limit = El limitador se puede puentear para el primer arranque.
belief-bypass-the-limit-truth = Nunca. Es lo que impide que un termostato soldado haga hervir el tanque; el código lo exige.
belief-bigger-breaker = Un disyuntor de 40 A acaba con los disparos.
belief-bigger-breaker-truth = Deja que el cable se caliente en su lugar. Calcúlelo de la placa: 125 % de la corriente, y el cable que corresponde.
belief-drip-means-valve = La válvula de alivio gotea, así que se cambia.
belief-drip-means-valve-truth = Casi siempre hace su trabajo: expansión en un sistema cerrado, o una presión estática demasiado alta. Lea primero el manómetro.
belief-trip-means-limit = Se disparó el limitador, así que el limitador está malo.
belief-trip-means-limit-truth = Un disparo es un síntoma. Halle el calor que se desbocó: un termostato soldado, un elemento a tierra, una conexión caliente.
belief-proved-once-is-enough = El medidor funcionaba antes, con eso basta.
belief-proved-once-is-enough-truth = Puede haber muerto después: viva, muerta, viva. Mientras no se compruebe otra vez, nada está comprobado sin tensión.
belief-breaker-off-is-safe = El disyuntor está apagado, así que es seguro.
belief-breaker-off-is-safe-truth = { $feed ->
    [neutral] Apagado según su etiqueta. Sólo una lectura en el metal, de vivo a neutro y cada uno a tierra, dice cuál era.
   *[legs] Apagado según su etiqueta. Sólo una lectura en el metal, de línea a línea y cada línea a tierra, dice cuál era.
}
belief-dial-down-is-off = Con el dial abajo está apagado.
belief-dial-down-is-off-truth = { $feed ->
    [neutral] Un control no aísla: hasta el termostato el vivo sigue con tensión contra el tanque.
   *[legs] Un termostato abre una línea. La otra sigue en cada elemento, a 120 V contra el tanque.
}
belief-dials-burn-elements = Los diales desiguales queman elementos.
belief-dials-burn-elements-truth = Cambian cuánta agua caliente hay, nada más. Póngalos iguales.
belief-ohms-with-wires-on = Los ohmios se pueden leer con los cables puestos.
belief-ohms-with-wires-on-truth = Entonces se leen también otros elementos, y con ellos un camino a tierra. Los dos cables sueltos, y luego leer.
belief-no-hot-means-lower = Nada de agua caliente: el elemento inferior.
belief-no-hot-means-lower-truth = El inferior solo deja caliente un tercio del tanque. Nada en absoluto es el suministro, el limitador o el elemento superior.
belief-draining-needs-no-air = Para drenar basta con abrir la válvula.
belief-draining-needs-no-air-truth = El agua sale sólo si entra aire. Abra un grifo caliente o la válvula de alivio, y vea que se haya vaciado.
belief-closed-at-minimum-is-welded = Sigue cerrado en su marca más baja, así que está soldado.
belief-closed-at-minimum-is-welded-truth = No en un tanque frío: el agua está por debajo de la marca más baja y uno sano sigue cerrado. Caliéntelo, o júzguelo por su corte.
belief-sediment-bill = El sedimento hace gastar más a un calentador eléctrico.
belief-sediment-bill-truth = Ninguna medición de un calentador eléctrico de tanque lo ha mostrado: el calor se queda en el tanque. El sedimento quita espacio y sobrecalienta el elemento inferior.
belief-bond-of-its-own = El tanque necesita su propio cable de unión.
belief-bond-of-its-own-truth = Lo une el cable de tierra de su circuito: calibre 10 en un circuito de 30 A. Lo que importa es que esté entero; el código local decide.
belief-warm-is-clean = { $safe-heat } mata la Legionella.
belief-warm-is-clean-truth = No la mata: ahí ya no crece, y muere sólo despacio. Guardar agua más caliente exige una válvula mezcladora, y lo decide quien responde por el edificio.
belief-seven-tenths = Siete décimos del tanque son su capacidad de primera hora.
belief-seven-tenths-truth = Eso es más o menos lo que da una sola extracción antes de enfriarse. La capacidad se mide durante una hora, con lo que se calienta entretanto; está en la etiqueta.
belief-recovery-sum = Galones por 8.33 por grados entre vatios da galones por hora.
belief-recovery-sum-truth = Eso tiene galones en ambos lados y ninguna hora. Vatios por 3.412, entre 8.33 por grados, da galones por hora.
belief-both-trip-at-once = Los dos elementos a la vez dispararían el interruptor al instante.
belief-both-trip-at-once-truth = 37.5 A en un interruptor de 30 A son el 125 %: puede aguantar minutos u horas, o siempre, y antes se calienta el cable. La pinza dice cuánto pasa.
belief-relief-opens-at-170 = La válvula de alivio debió abrir a { $limit-heat }.
belief-relief-opens-at-170-truth = { $limit-heat } es del limitador. La válvula de alivio abre a { $relief-heat } o a su presión; la que sigue cerrada por debajo está sana.
belief-nothing-boils-below-212 = El agua no está hirviendo, así que ahí dentro nada puede hervir.
belief-nothing-boils-below-212-truth = Bajo el sarro la funda está mucho más caliente que el agua y la hace hervir en su piel. Ése es el chasquido: hay que enjuagar.
belief-white-is-neutral = El blanco es neutro, no puede hacer daño.
belief-white-is-neutral-truth = { $feed ->
    [neutral] Un neutro abierto en su regreso queda a todo el voltaje a través del elemento. Mídalo contra una tierra comprobada.
   *[legs] En un calentador de 240 V el cable blanco es la segunda línea: 120 V contra el tanque. Debería llevar marca; mídalo.
}
belief-full-in-an-hour = Una hora después de vaciarse está lleno de agua caliente.
belief-full-in-an-hour-truth = Un tanque entero ocupa a un elemento bastante más de una hora. La corriente y el voltaje dicen si trabaja.
belief-any-megohms-are-bad = Cualquier lectura del elemento al tanque es un elemento malo.
belief-any-megohms-are-bad-truth = Un megohmio o más está sano: un poco de humedad en el aislamiento da esa lectura. Por debajo, séquelo y pruebe otra vez.
belief-nothing-to-the-tank-is-dead = Apenas marca contra el tanque, así que está sin tensión.
belief-nothing-to-the-tank-is-dead-truth = { $feed ->
    [neutral] Sólo si el tanque es tierra. Con el cable de tierra suelto puede estar al mismo voltaje que el tornillo: mida contra una tierra comprobada, y de vivo a neutro.
   *[legs] Sólo si el tanque es tierra. Con el cable de tierra suelto puede estar al mismo voltaje que el tornillo: mida contra una tierra comprobada, y de línea a línea.
}

## Por qué un código o un archivo no sirve

wrong-order-unreadable = línea { $line }, columna { $column }: { $problem }. Compárelo con docs/drill-file.md
wrong-order-rules = esta práctica se hizo para las reglas { $found }; esta versión tiene las reglas { $rules }. Ábrala con la versión que la hizo
wrong-order-range = { $name } tiene que estar entre { $low } y { $high }, no { $value }
wrong-order-empty = la lista de fallas está vacía: nombre una, o deje `fault` fuera para cualquiera
wrong-order-nothing-fits = ninguna de las fallas pedidas puede darse en esta casa: elija otro calentador u otras fallas
wrong-order-no-second = ninguna segunda falla de la clase pedida puede darse junto a la primera: elija otra, otro calentador u otra licencia
wrong-fault-unknown = { $id } no tiene el parámetro "{ $name }"; tiene { $known }
wrong-fault-range = { $id }: { $name } tiene que estar entre { $low } y { $high } { $unit }, no { $value }
wrong-fault-house = { $id } no puede darse en esta casa: vea en su archivo el equipo que necesita
wrong-code-character = '{ $found }' no se usa en los códigos: lea otra vez el código, carácter { $place }
wrong-code-check = este código tiene un error: compárelo con la hoja, carácter por carácter
wrong-code-length = esto no es un código completo: tiene { $found } caracteres
wrong-code-rules = este código se hizo para las reglas { $found }; esta versión tiene las reglas { $rules }. Use la versión que lo hizo
wrong-code-no-room = en un código no cabe { $what }: reparta la práctica como archivo o enlace
wrong-attempt-large = el archivo tiene { $found } bytes; un intento tiene { $most } como mucho. ¿Es el archivo correcto?
wrong-attempt-unreadable = línea { $line }, columna { $column }: { $problem }. Si el archivo termina antes de tiempo, pídalo otra vez al aprendiz
wrong-attempt-drill = línea { $line }, la práctica: { $error }
wrong-attempt-code = línea { $line }, el código de la práctica: { $error }
wrong-attempt-act = línea { $line }, acción { $act }: { $problem }. Compárelo con docs/attempt-file.md
wrong-attempt-rules = este intento se hizo con las reglas { $found }; esta versión tiene las reglas { $rules }. Ábralo con la versión que lo hizo
wrong-attempt-many = { $found } acciones; un intento tiene { $most } como mucho
wrong-attempt-edited = la acción { $act } (línea { $line }) se cambió después de hacer el archivo: su huella no coincide
wrong-attempt-edited-head = el aprendiz, la práctica o su marca de ejercicio repetido se cambió después de hacer el archivo: su huella no coincide
wrong-attempt-cut = { $acts } acciones pero { $links } huellas: el archivo se cortó o se alargó tras la acción { $place }
wrong-opening-unreadable = línea { $line }: { $problem }. ¿Es el archivo de apertura del instructor?
wrong-opening-rules = este archivo de apertura se hizo para las reglas { $found }; esta versión tiene las reglas { $rules }

## Registros y tablas

trace-learner = Aprendiz
trace-sealed = sellado
trace-unsealed = sin sello
trace-no-code = sin código
trace-truth = Lo que estaba mal

## The guide of the first two calls

guide-title = A su lado
guide-show = Muéstreme dónde
guide-reason = ¿Por qué?
guide-away = Guardar la guía
guide-back = Volver a la guía
guide-stage-done = hecho
guide-stage-now = ahora
guide-stage-left = falta
guide-stage-heard = Escuchado
guide-stage-off = Sin corriente
guide-stage-locked = Bloqueado
guide-stage-dead = Sin tensión
guide-stage-read = Medido
guide-stage-named = Nombrado
guide-stage-changed = Cambiado
guide-stage-refilled = Lleno
guide-stage-on = Energizado
guide-stage-proved = Comprobado
guide-stage-over = Entregado
guide-ask = Pregunte al cliente cuándo salió agua caliente por última vez.
guide-why-ask = Lo que cuenta acota la búsqueda antes de sacar una herramienta.
guide-plate = Lea la placa de datos.
guide-why-plate = Sus voltios y vatios dicen qué mide un elemento sano y qué repuesto va.
guide-tell = Avise a la casa que no habrá corriente ni agua.
guide-why-tell = Quien no lo sabe puede volver a conectarla con sus manos adentro.
guide-directory = En el tablero, lea el directorio.
guide-why-directory = Dice qué disyuntor alimenta el calentador. Puede estar mal: por eso se prueba después.
guide-off = Apague el disyuntor { $slot }.
guide-why-off = Primero cortar la corriente: antes no se abre ninguna tapa.
guide-try = Intente arrancarlo: suba el termostato y escuche.
guide-why-try = Nada debe arrancar. Si algo arranca, se apagó otro disyuntor.
guide-lock = Ponga su propio candado y etiqueta en el disyuntor { $slot }.
guide-why-lock = Un disyuntor solo apagado lo enciende cualquiera. La llave queda con usted.
guide-protect = Póngase los guantes y los lentes del equipo.
guide-why-protect = Bloqueado aún no es sin tensión. Hasta probarlo, cada tornillo cuenta como vivo.
guide-open = En { $place }, quite todo hasta los tornillos.
guide-why-open = Detrás están los tornillos que hay que medir antes de meter la mano.
guide-meter = Pruebe el medidor en un tomacorriente que sabe vivo.
guide-why-meter = Con una punta rota el medidor marca 0 V en todo. Vea primero que puede mostrar tensión.
guide-zero = Junte las puntas y póngalas a cero.
guide-why-zero = Las puntas tienen sus propios ohmios, que se sumarían a la lectura.
guide-ground = Mida { $dial }: roja en { $red }, negra en { $black }.
guide-why-ground = Casi nada aquí prueba la tierra. Contra una tierra abierta, 0 V no probaría nada.
guide-legs = Mida { $dial }: roja en { $red }, negra en { $black }.
guide-why-legs = Primero línea a línea. Pero 0 V aquí también lo da una línea perdida; por eso sigue más.
guide-to-ground = Mida { $dial }: roja en { $red }, negra en { $black }.
guide-why-to-ground = Cada línea, y cada tornillo que tocará, contra la tierra que usted probó.
guide-again = Pruebe otra vez el medidor en el tomacorriente.
guide-why-again = Si hubiera fallado, los 0 V leídos no valdrían nada. Con esto queda probado sin tensión.
guide-label = Elija el tornillo y etiquete el { $wire }.
guide-why-label = Lo que se quita debe volver a su propio tornillo.
guide-lift = Suelte el { $wire }.
guide-why-lift = Con los cables puestos, otros caminos responden por el elemento.
guide-ohms = Mida { $dial }: roja en { $red }, negra en { $black }.
guide-why-ohms = De extremo a extremo. La placa pide voltios por voltios entre vatios; fuera de rango es abierto.
guide-shell = Mida { $dial }: roja en { $red }, negra en { $black }.
guide-why-shell = El hilo también puede tocar su vaina. Fuera de rango aquí significa que no la toca.
guide-pole = Mida { $dial }: roja en { $red }, negra en { $black }.
guide-why-pole = Un contacto que cierra marca casi nada. Fuera de rango es uno que ya no cierra.
guide-lower = Mida desde aquí el elemento inferior: { $dial }, roja en { $red }, negra en { $black }.
guide-why-lower = Su termostato está cerrado mientras está frío: sus ohmios se ven aquí. Dos elementos abiertos se ven igual en la llave.
guide-unclear = Lo que midió no dice qué está mal. Siga buscando antes de nombrar nada.
guide-why-unclear = Nada se cambia por adivinar: pida una pista, o mida lo que no ha medido.
guide-name = Marque sus lecturas en el registro, elija «{ $fault }» y anótelo.
guide-why-name = Primero la evidencia, luego el nombre, luego la reparación: nunca al revés.
guide-cost = Diga el precio del trabajo y que el cliente lo acepte.
guide-why-cost = Es su dinero, y ahora sabe para qué es.
guide-cold-off = Arriba del calentador, cierre la llave de agua fría.
guide-why-cold-off = Si no, el tanque se llena mientras se vacía.
guide-air = Abra el agua caliente de la cocina.
guide-why-air = Quita la presión y deja entrar aire: sin aire el tanque no se vacía.
guide-hose = Ponga la manguera en el desagüe.
guide-why-hose = El agua debe ir adonde no queme a nadie ni dañe nada.
guide-drain = Abra el desagüe.
guide-why-drain = Solo hasta el elemento: el candado queda puesto, pues descubierto se quema en un minuto.
guide-drain-wait = Deje pasar diez minutos mientras se vacía.
guide-why-drain-wait = El agua debe quedar bajo la brida antes de destornillar el elemento.
guide-change = De la camioneta, ponga un elemento con los voltios, vatios, largo y montaje de la placa, asiento limpio.
guide-why-change = Esta pieza y ninguna otra: la que midió y nombró. Si el agua aún está alta, se le dirá.
guide-change-limit = De la camioneta, ponga un limitador nuevo.
guide-why-change-limit = Esta pieza y ninguna otra: la que midió y nombró. El tanque queda lleno.
guide-new-ohms = Mida también el nuevo: { $dial }, roja en { $red }, negra en { $black }.
guide-why-new-ohms = Una pieza nueva puede ser la equivocada, o mala.
guide-land = Vuelva a poner el { $wire } en { $screw }, con el destornillador de torque.
guide-why-land = Cada cable en su tornillo. Una unión floja se quema.
guide-loose = Averigüe con el óhmetro adónde va cada cable suelto, y conéctelo ahí con el destornillador de torque.
guide-why-loose = Quedaron sueltos sin etiqueta, y a la vista nada dice cuál es cuál. Un cable en el tornillo equivocado puede dejar con tensión un elemento, o disparar el disyuntor.
guide-drain-shut = Cierre el desagüe.
guide-why-drain-shut = Agua antes que corriente: ahora se llena, y el candado sigue puesto.
guide-hose-off = Quite la manguera.
guide-why-hose-off = El desagüe está cerrado y nada debe quedar en él.
guide-air-out = Abra el agua caliente de la cocina.
guide-why-air-out = El aire debe salir del tanque mientras entra el agua.
guide-cold-on = Arriba del calentador, abra del todo el agua fría.
guide-why-cold-on = Un elemento conectado en el aire se quema en menos de un minuto.
guide-fill-wait = Deje pasar diez minutos mientras se llena.
guide-why-fill-wait = Está lleno solo cuando la llave corre llena y pareja, sin escupir, unos minutos.
guide-lever = Levante la palanca de la válvula de alivio.
guide-why-lever = Agua sólida muestra que arriba está lleno, y que la válvula abre.
guide-lever-down = Suelte la palanca de la válvula de alivio.
guide-why-lever-down = Tiene que volver a asentar.
guide-tap-shut = Cierre la llave.
guide-why-tap-shut = El aire ya salió.
guide-leak = Mire en el compartimento el empaque nuevo.
guide-why-leak = Una gota ahora caería después sobre tornillos vivos.
guide-close = En { $place }, reponga todo.
guide-why-close = Aislante, protector y tapa antes de la corriente: tornillos cubiertos, termostato abrigado.
guide-box = Quite la tapa de la caja de conexiones.
guide-why-box = Allí la pinza rodea un cable sin acercar la mano a un tornillo.
guide-unlock = Quite su candado del disyuntor { $slot }.
guide-why-unlock = Cables puestos, agua adentro, aire afuera, tapas puestas: solo ahora.
guide-on = Encienda el disyuntor { $slot }.
guide-why-on = Tanque lleno, tapas puestas: ahora puede calentar.
guide-amps = En la caja de conexiones, ponga la pinza en el cable de la línea 1.
guide-why-amps = Vatios entre voltios es la corriente esperada. Los voltios solos no muestran que caliente.
guide-cut-out = Espere al corte.
guide-why-cut-out = Que caliente es media prueba. La otra mitad es que pare.
guide-no-amps = Ponga la pinza otra vez en el mismo cable.
guide-why-no-amps = Satisfecho es sin corriente alguna. Lo que aún corra calentaría sin fin, o iría a la carcasa.
guide-box-shut = Ponga la tapa de la caja de conexiones.
guide-why-box-shut = Nada vivo queda abierto.
guide-hot = Llene una cubeta de agua caliente en la cocina.
guide-why-hot = Para esto llamó el cliente.
guide-result = Diga al cliente qué se halló y qué se hizo, y que el agua sale caliente.
guide-why-result = Tras días fríos, el agua caliente sorprende.
guide-hand-over = Entregue el trabajo.
guide-why-hand-over = El repaso recorre luego lo que hizo, paso a paso.
page-door-first = Su primer servicio
page-door-first-about = Una familia no tiene agua caliente. Una línea tranquila le dice qué sigue, y por qué si lo pregunta, de la primera pregunta a la última prueba. Unos cinco minutos, sin manual; aquí nada puede lastimarlo.
page-first = Empezar su primer servicio
page-second = Segundo servicio: vaciar, cambiar, llenar

## What can I do here?

here-title = ¿Qué puedo hacer aquí?
here-can = Ahora puede
here-act = { $heading }: { $act }
here-cannot = Ahora no, y por qué
here-points = Puntos para sus puntas (va la que tiene en la mano)
here-drawing = Este es el dibujo completo: vaya a un lugar, por el dibujo o por su tecla, para trabajar allí.
here-always = Siempre a mano, esté donde esté: el cliente, el medidor, el equipo, el registro. Con el teclado, Tab va de una fila de botones a la siguiente, y las flechas van por la fila o de punto en punto.
here-unwritten = El hallazgo elegido en el registro aún no está escrito.
here-key = La tecla { $key } abre esto
here-sound = Sonidos: el tono del medidor, el clic de un control

## What a page offers, behind the question mark

help-here = En esta página
help-anywhere = En todas las páginas
help-doors-first = Se explica solo mientras lo trabaja. Empiece aquí si nunca ha venido.
help-doors-practise = Elija lo difícil que sea distinguir la falla, su familia o el calentador, o déjelo todo al azar. Guiada, hay pistas y se detiene la acción que haría daño; sin ayuda, ni lo uno ni lo otro.
help-doors-code = Escriba el código o abra el archivo, y trabaja el mismo servicio que todos los que lo tienen.
help-doors-exam = Con el código de su instructor. El repaso queda cerrado hasta que se cargue el archivo de apertura.
help-doors-instructor = Componga un servicio, repártalo y vea lo que se hizo con él.
help-ready = Antes de un servicio
help-ready-about = Una ficha dice qué servicio es y qué límites tiene. Su nombre o número va en su intento. Donde no haya ficha, vaya a la primera página y elija un servicio.
help-debrief-accounts = Lo que se perdió en cada cuenta, con la acción que lo perdió. Pulse una acción para ir a su momento.
help-debrief-strip = Arrastre la tira del pie, o muévase por ella con las flechas: las curvas, el calentador y el circuito la siguen. Con Re Pág y Av Pág va de acción en acción.
help-debrief-inspector = Lo que dijo, lo que descartó y lo que habría mostrado con otra falla.
help-debrief-from = El trabajo empieza de nuevo después de la acción elegida, marcado como práctica. Un examen se trabaja una sola vez.
help-debrief-steps = Todo el trabajo en una lista; pulse una acción para ir a ella.
help-debrief-print = Lo que se le dejaría a un cliente, con sus advertencias.
help-debrief-hand-in = Guarde el archivo, o copie el texto, y déselo a su instructor. Desde aquí no se envía nada.
help-instructor-hand-out = Elija cómo será el servicio; lo que deje se sortea. Obtiene un código, un enlace, un código cuadrado para una cámara, una hoja para imprimir y un archivo: todos abren el mismo servicio.
help-instructor-exam = Un examen viene con un archivo de apertura. Guárdelo hasta que todos hayan entregado: solo con él se puede leer el repaso.
help-instructor-collect = Abra los archivos o pegue los textos. Cada intento se trabaja otra vez en este aparato, y la tabla muestra sus cuatro cuentas.
help-instructor-step = Una fila abre el repaso de ese intento.
help-instructor-csv = Para una hoja de cálculo: una línea por intento.
help-show-acts = Haga lo que haría en la hoja; el grupo ve cómo responde el interior.
help-atlas-search = Por su nombre o por cualquier palabra de su línea.
help-atlas-entry = Elija una falla: la misma casa se recorre sana y con ella, una al lado de la otra; si empeora por etapas, se muestra cada una.
help-atlas-alike = La misma casa se recorre con cada una de las demás fallas que caben, y se dice la acción que las distingue.
help-sources-search = Un nombre, un valor o un documento; o elija una clase de fuente.
help-sources-row = Cada número dice de qué documento y tabla viene, o que es práctica común, de memoria o elegido para la simulación.
help-glossary-search = Una palabra, o parte de ella.
help-glossary-here = Donde un término lleva puntos debajo, púlselo: allí se abre lo que significa.
help-look-up = Consultar algo
help-look-up-about = Al pie: el atlas de fallas, los términos del oficio y de dónde viene cada número.
help-speech = Idioma y unidades
help-speech-about = El idioma está arriba, las unidades al pie. Un trabajo en curso queda como está.
help-kept = Lo que se guarda
help-kept-about = Su trabajo se guarda solo en este aparato, hasta que lo borre al final.

## The terms of the trade

window-glossary = Términos
glossary-link = Términos
glossary-title = Términos
glossary-heading = Términos del oficio
glossary-lead = Qué significan las palabras de estas hojas. Una línea punteada bajo una palabra la abre donde está. En un calentador real, mandan las normas locales y una persona con licencia.
glossary-seek = Buscar
glossary-count = { $count ->
    [one] Un término
   *[other] { $count } términos
 }
glossary-all = Todos los términos
glossary-here = Términos usados aquí

## The demonstration view

window-show = Vista interior
show-title = El interior, para que lo vea un salón
show-tag = Vista interior
show-link = Mostrar el interior
show-back = Volver a la hoja
show-none = No hay un servicio guiado en curso que mostrar. Empiece uno, o elija una falla del atlas.
show-about = Muestra a un salón un servicio guiado con esta falla: quien enseña hace los actos, y se ve el interior del calentador.
show-start = Empezar a mostrarla
show-acts = Actos
show-figures = Cifras
show-live = Hay tensión en el calentador
show-dead = Sin tensión en el calentador
