### Lo que dice Heaphand, en español. Corto, claro, con las palabras de la cuadrilla.
### {$entry} es el número de una línea de la bitácora.

## Por Telegram
telegram-not-known =
    Llevo la bitácora de la cuadrilla de un solo sitio, y este chat no es de ellos.
    Para usarme aquí, pida a quien me administra la palabra que deja entrar a un grupo.
telegram-let-in =
    Este grupo lleva ahora la bitácora de { $site }.
    Mande lo que hizo: "carrito 61 kg", "B 58". "ayuda" muestra más.
    Para quitar algo use el botón Deshacer o "deshacer": borrar un mensaje no cambia nada en la bitácora.
telegram-cannot-hear =
    No oigo los mensajes de este grupo: el modo de privacidad está activo.
    Hágame admin aquí, o apague ese modo en los ajustes del bot y agrégueme otra vez.
    Mientras tanto: /log carrito 61, o conteste uno de mis mensajes.
telegram-cannot-read = Solo leo texto. Escríbalo, o ponga las palabras debajo de la foto.
telegram-gap =
    Estuve fuera más de un día. Pueden faltar mensajes de ese tiempo:
    mande otra vez lo que no esté en la bitácora.
telegram-which-site = Usted está en más de un sitio. ¿Para cuál es esto? (/site lo cambia después.)
telegram-unreached = { $has ->
    [no] Llegó una alarma y aquí no se conoce a ningún coordinador: quien esté a cargo, mire aquí ya.
   *[yes] { $who }: llegó una alarma y no se pudo avisar en directo a ningún coordinador. Miren aquí ya.
  }
    Para recibir el aviso en directo, abran un chat conmigo y aprieten Iniciar.
telegram-topic-chosen = El resumen de la semana y la línea de la mañana llegarán aquí.
menu-today = Lo que hay que hacer
menu-week = La semana en números
menu-piles = Cómo van las pilas
menu-mix = La mezcla de hoy
menu-undo = Quitar lo último que anoté
menu-log = Anotar algo: /log carrito 61
menu-help = Lo que entiendo
menu-year = El año contra la meta
menu-settings = Los ajustes del sitio
menu-share = Un enlace para quien no tiene cuenta
menu-export = La bitácora en hoja de cálculo
menu-report = Un reporte para entregar
menu-here = Resumen y línea de la mañana en este tema

## Nombres de las cosas
place-pile = pila { $name }
place-bay = cajón { $name }
place-drum = { $named ->
    [yes] tambor { $name }
   *[no] tambor
  }
place-exit = salida
place-ambient = aire
place-floor = piso
place-lift = elevador

material-food-scraps = restos de comida
material-wood-chips = astillas
material-sawdust = aserrín
material-leaves = hojas
material-cardboard = cartón
material-paper = papel
material-straw = paja
material-grass = pasto
material-coffee-grounds = borra de café
material-garden-waste = poda
material-manure = estiércol
material-finished-compost = composta lista
material-water = agua
material-residue = basura
material-leachate = lixiviado
material-overs = rechazo de criba

container-cart = { $count ->
    [one] carrito
   *[other] { $shown } carritos
  }
container-bucket = { $count ->
    [one] cubeta
   *[other] { $shown } cubetas
  }
container-bag = { $count ->
    [one] bolsa
   *[other] { $shown } bolsas
  }
container-bale = { $count ->
    [one] paca
   *[other] { $shown } pacas
  }
container-barrel = { $count ->
    [one] barril
   *[other] { $shown } barriles
  }
container-barrow = { $count ->
    [one] carretilla
   *[other] { $shown } carretillas
  }
container-loader-bucket = { $count ->
    [one] cucharón
   *[other] { $shown } cucharones
  }

point-top = arriba
point-middle = centro
point-bottom = abajo
point-north = norte
point-south = sur
point-east = lado este
point-west = oeste
point-front = frente
point-back = atrás
point-core = corazón
point-edge = orilla

feel-dry = seca
feel-right = en su punto
feel-wet = mojada
feel-dripping = escurre
layer-mature-compost = composta madura
layer-wood-chips = astillas
layer-geotextile = geotextil
layer-tarp = lona
layer-unspecified = cubierta
mode-automatic = automático
mode-manual = a mano
mode-off = apagado
fan-off = apagado
fan-low = bajo
fan-high = alto
topic-odour = olor
topic-leachate = lixiviado
topic-flies = moscas
topic-pests = plaga
topic-freezing = helada
topic-fault = falla
topic-power = sin luz
topic-spill = derrame
topic-contamination = contaminación
topic-sharps = objeto punzante
topic-complaint = queja
topic-smoke = humo
topic-injury = alguien herido
topic-other = otro
strength-none = ninguno
strength-faint = leve
strength-strong = fuerte
chore-sweep = barrido
chore-wash-lift = elevador lavado
chore-wash-containers = carritos lavados
chore-clean-tools = herramientas limpias
chore-clean-spill = derrame limpio
chore-check-fan = ventilador revisado
chore-check-stop-button = botón de paro probado
chore-check-scale = báscula revisada
chore-check-thermometer = termómetro revisado
chore-check-odour = ronda de olores
chore-lock-gate = portón cerrado
chore-inspect = recorrido hecho
chore-watered = riego
weather-rain = lluvia
weather-frost = helada
weather-snow = nieve
weather-heat = calor
weather-wind = viento
qualifier-not-detected = no detectado
choice-start = empezarla
choice-each = cada uno
choice-all = por todos
choice-both = por los dos
choice-net = neto
choice-gross = bruto
choice-same = el mismo carrito
choice-another = otro carrito
choice-yes = sí
choice-no = no
choice-full = llena
choice-ready = lista
choice-today = hoy
choice-drop = dejarlo
kind-weigh-in = peso
kind-temperature = temperatura
kind-moisture = humedad
kind-turning = volteo
kind-cover = cubierta
kind-discharge = descarga
kind-transfer = traslado
kind-removal = salida del sitio
kind-lab-result = resultado de laboratorio
kind-pile = pila
kind-level = nivel

date-today = hoy
date-yesterday = ayer, { $day }
date-tomorrow = mañana, { $day }
date-at = { $date } { $clock }

## Líneas de la bitácora
what-material = { $material }
what-container = { $container }
what-container-of = { $container } de { $material }
what-load = { $count ->
    [one] carga
   *[other] { $count } cargas
  }
line-net = #{ $entry } { CAP($what) } { $net } neto ({ $gross } − { $tare })
line-pending = #{ $entry } { CAP($what) } { $gross } bruto, neto pendiente: falta la tara
line-weighed = #{ $entry } { CAP($what) } { $kg }
line-volume = #{ $entry } { CAP($what) } { $litres }
line-counted = #{ $entry } { CAP($what) }
line-temperature = #{ $entry } { CAP($place) } { $values }
line-moisture = #{ $entry } { CAP($place) }, al tacto: { $feel }
line-moisture-percent = #{ $entry } { CAP($place) } { $pct } de agua
line-turned = #{ $entry } Volteo: { $pile }
line-turned-into = #{ $entry } Volteo: { $pile } a { $to }
line-covered = #{ $entry } Tapado: { $pile }, { $layer }
line-uncovered = #{ $entry } Destapado: { $pile }, sin { $layer }
line-discharge = #{ $entry } Tambor descargado
line-discharge-to = #{ $entry } Tambor descargado en { $pile }
line-transfer = #{ $entry } { CAP($from) } a { $to }
line-drum-setting = #{ $entry } { CAP($place) }, ajuste
line-level = #{ $entry } { CAP($what) }, nivel
line-problem = #{ $entry } Problema anotado: { $topic }
line-resolved = #{ $entry } Resuelto: { $topic }
line-chore = #{ $entry } { CAP($chore) }
line-weather = #{ $entry } Se espera { $weather }, { $date }
line-weather-observed = #{ $entry } Clima visto: { $weather }
line-removal = #{ $entry } Salió del sitio: { $material }
line-screening = #{ $entry } Cernido: { $pile }
line-delivery = #{ $entry } Llegó: { $material }
line-rejected = #{ $entry } Devuelto: { $what }
line-pile-started = #{ $entry } Empezada: { $pile }
line-pile-full = #{ $entry } { CAP($pile) }: llena y cerrada
line-pile-finished = #{ $entry } { CAP($pile) }: terminada
line-pile-ready = #{ $entry } { CAP($pile) }: dicen que está lista
line-pile-emptied = #{ $entry } { CAP($pile) }: vacía
line-pile-joined = #{ $entry } { CAP($pile) } se juntó con { $with }
line-pile-split = #{ $entry } { CAP($pile) } se separó de { $with }
line-pile-moved = #{ $entry } { CAP($pile) } ahora es { $to }
line-sample = #{ $entry } { $count ->
    [one] Muestra
   *[other] { $count } muestras
  } de { $pile }
line-lab = #{ $entry } Laboratorio, { $place }: { $analyte } { $value }
line-density = #{ $entry } { CAP($place) }: densidad { $density }
line-hours = #{ $entry } { $people ->
    [one] Una persona
   *[other] { $people } personas
  }, { $hours } h
line-note = #{ $entry } Nota: { $has ->
    [no] sus palabras se borraron
   *[yes] { $text }
  }
line-setting = #{ $entry } Ajuste: { $what }
line-void = #{ $entry } anula #{ $old }
line-duty = #{ $entry } Tarea: { $name } ({ $every })
line-duty-removed = #{ $entry } Tarea quitada: { $name }
line-duty-claim = #{ $entry } Le toca: { $duty }
line-duty-release = #{ $entry } Devuelta: { $duty }
line-duty-postpone = #{ $entry } Aplazada: { $duty } { $until }
line-duty-done = #{ $entry } Hecho: { $duty }

part-kg = { $kg }
part-litres = { $litres }
part-containers = { $what }
part-estimate-litre = unos { $kg } (estimado, { $factor } kg/L{ $hasRange ->
    [yes] ; { $low }–{ $high }
   *[no] {""}
  })
part-estimate = unos { $kg } (estimado, { $each } cada uno{ $hasRange ->
    [yes] ; { $low }–{ $high }
   *[no] {""}
  })
part-no-estimate = peso desconocido
part-fill = lleno al { $pct }
part-from = de { $source }
part-into = en { $place }
part-off = de { $place }
part-to = a { $to }
part-at = { $place }
part-words = { $text }
part-contaminated = contaminado
part-of-which = de eso, { $what } { $kg }
part-lowest-highest = mínima { $low }, máxima { $high }
part-depth = a { $depth } de hondo
part-mode = { $mode }
part-every = cada { $min }
part-fan = ventilador { $fan }
part-strength = { $strength }
part-reads = { $against } marca { $reads }
part-mm = { $mm }
part-overs = rechazo { $amount }
part-approximate = más o menos
part-replaces = reemplaza #{ $old }
part-date = { $date }
part-clock = { $clock }

assumed-unit-other = leído como { $typed }
assumed-date-carried = mismo día que arriba
assumed-place-carried = mismo lugar que arriba
assumed-spelling = leído con una errata
assumed-pile-successor = la pila en que se convirtió
assumed-same-again = igual que antes

setting-tare = tara { $container } { $kg }
setting-litres = { $container }: { $litres }
setting-factor = { $container }, lleno: { $kg } neto
setting-moisture = { $material } { $pct } de agua
setting-target = meta { $tonnes } al año
setting-other = { $name } { $value }
setting-week = resumen de la semana, { $day } { $clock }
setting-morning = línea de la mañana, { $clock }
setting-ratio = receta { $chips } de astillas por { $food } de comida
setting-no-recipe = sin receta; vuelve la ventana usual
setting-accepts = { $has ->
    [in] sí a { $in }
    [out] no a { $out }
   *[both] sí a { $in }; no a { $out }
  }
setting-nearby = gente delicada cerca: { $nearby ->
    [wards] hospital u hogar
    [classrooms] escuela
   *[none] nadie
  }
setting-cautions = { $on ->
    [on] avisos de seguridad del día: sí
   *[off] avisos del día: no; bloqueo, punzantes y fuego se quedan
  }
setting-cap = tope por { $per } { $kg }
setting-cap-off = sin tope por { $per }
setting-paper = { $what } { $name } vence { $date }
setting-paper-off = { $what } { $name } ya no se vigila
setting-every = { $what } cada { $days ->
    [one] día
   *[other] { $days } días
  }
setting-wards = lado que se protege del olor: { $point }
setting-wards-off = ningún lado que proteger del olor
setting-name-turn-pile = volteo en maduración
settings-also = { CAP($what) }
cap-over = Se pasó el tope por { $per }: { $kg } de { $cap }, hasta { $date }. El permiso decide qué puede entrar aún.
part-wind-from = del { $point }
part-wind-to = hacia las { $near }
permit-permit = permiso
permit-training = formación
near-wards = salas
near-classrooms = aulas
near-people = personas
compass-north = norte
compass-north-east = noreste
compass-east = este
compass-south-east = sureste
compass-south = sur
compass-south-west = suroeste
compass-west = oeste
compass-north-west = noroeste
setting-keep = palabras de los mensajes guardadas { $days ->
    [one] 1 día
   *[other] { $days } días
  }
setting-name-unit-mass = pesos en
setting-name-unit-temperature = temperaturas en
setting-name-unit-volume = volúmenes en
setting-name-unit-length = largos en
setting-name-time-zone = zona horaria
setting-name-day-order = orden de fechas
setting-name-languages = idiomas
setting-name-week-starts = la semana empieza
setting-name-year-starts = el año empieza en el mes
setting-name-rule-set = regla de calor
setting-name-safety-emergencynumber = número de emergencia
setting-name-safety-address = dirección
setting-name-safety-isolator = interruptor principal
setting-name-safety-firstaider = primeros auxilios
setting-name-aeration = aireación
setting-name-name = nombre
setting-name-place = lugar
setting-name-page-address = dirección de la página
setting-name-holds = carga usual
setting-name-bulk-density = densidad

more-entries = … y { $count } líneas más, todas en la bitácora.

## Dudas: la pregunta que lo aclara
doubt-too-heavy = #{ $entry } { $said }: demasiado para eso. ¿Cuál?
doubt-too-light = #{ $entry } { $said }: muy poco, vacío pesa más. ¿Cuál?
doubt-negative = #{ $entry } { $said }: menos que nada. ¿Cuánto pesó?
doubt-each-or-all = #{ $entry } { $said }: ¿cada uno, o por todos?
doubt-count-differs = #{ $entry } { $said }: la cuenta y los pesos no coinciden. ¿Cuál vale?
doubt-gross-or-net = #{ $entry } { $said }: ¿con el recipiente, o sin él?
doubt-tare-unlikely = #{ $entry } { $said }: ¿bruto y tara, o un rango?
doubt-other-unit = #{ $entry } { $said }: lejos de lo usual, puede ser la otra unidad. ¿Cuál?
doubt-which-unit = #{ $entry } { $said }: ¿°C o °F?
doubt-impossible-temperature = #{ $entry } { $said }: eso no puede ser. ¿La lee otra vez?
doubt-impossible-value = #{ $entry } { $said }: eso no puede ser. ¿Cuál?
doubt-number-ambiguous = #{ $entry } { $said }: ¿qué número?
doubt-either-or = #{ $entry } { $said }: ¿cuál de los dos?
doubt-no-material = #{ $entry } { $said }: ¿qué traía?
doubt-no-place = #{ $entry } { $said }: ¿qué pila?
doubt-unknown-place = #{ $entry } { $said }: { $place } no se conoce aquí. ¿Empezarla, o cuál?
doubt-ceased-place = #{ $entry } { $said }: { $place } ya no existe. ¿Cuál?
doubt-which-places = #{ $entry } { $said }: ¿qué pilas?
doubt-date-impossible = #{ $entry } { $said }: ese día no existe. ¿Qué día?
doubt-date-contradicts = #{ $entry } { $said }: el día y la fecha no coinciden. ¿Qué día?
doubt-date-today-or-last = #{ $entry } { $said }: ¿hoy, o hace una semana?
doubt-date-in-future = #{ $entry } { $said }: eso no ha llegado. ¿Qué día?
doubt-date-too-old = #{ $entry } { $said }: eso es de hace mucho. ¿Qué mes?
doubt-same-cart = #{ $entry } Parece { $said }, anotado hace un momento. ¿El mismo carrito u otro?
doubts-same-cart = { $entries } se parecen a { $said }, anotados hace un momento. ¿Los mismos carritos u otros?
doubt-full-or-ready = #{ $entry } { $said }: ¿llena, o lista para usar?
doubt-unclear = #{ $entry } { $said }: no me queda claro.
doubts-wait = { $count ->
    [one] Todavía no cuenta.
   *[other] Nada de esto cuenta todavía.
  }
danger-if-true = Si es cierto, está cerca de arder: NO LA ABRAN NI LA VOLTEEN. Gente atrás, ventilador apagado solo si es seguro, llamen a los bomberos. No la mojen a medias.

answered-already = #{ $entry } ya tiene respuesta: vea #{ $by }.
dropped = { $count ->
    [one] { $entries } descartado. Queda en la bitácora, no cuenta.
   *[other] { $entries } descartados. Quedan en la bitácora, no cuentan.
  }
button-choice = { $choice }
button-drop = Dejarlo
button-name = { $who }
button-undo = { $count ->
    [one] Deshacer
   *[other] Deshacer los { $count }
  }
button-undo-entry = Deshacer #{ $entry }
button-gone = Ese botón ya no se conoce. Mejor escríbalo.

## Corregir
undone = { $count ->
    [one] Deshecho: { $entries }. Queda en la bitácora, no cuenta.
   *[other] Deshechos: { $entries }. Quedan en la bitácora, no cuentan.
  }
undone-already = #{ $entry } ya estaba deshecho (#{ $by }).
replaced-already = #{ $entry } se reemplazó con #{ $by }. Para deshacer ese: "deshacer #{ $by }".
not-yours = #{ $entry } lo anotó otra persona: ella o la coordinación puede deshacerlo.
no-such-entry = No hay #{ $entry } en la bitácora.
nothing-to-undo = No hay nada suyo que deshacer.
amend-which = ¿Qué línea debe ser { $to }? Conteste su mensaje, o "deshacer" y mándela otra vez.
edited = { $count ->
    [one] Mensaje editado: { $entries } queda reemplazado.
   *[other] Mensaje editado: { $entries } quedan reemplazados.
  }
left-over = No leído: { $pieces }{ $more ->
    [0] {""}
   *[other] {" "}y { $more } más
  }
what-was-number = { $text }: ¿qué era? No se anotó nada.
kept-unread = Su mensaje está guardado, pero algo falló de nuestro lado. Lo vamos a revisar.

## Lo que falta
ask-tare = ¿Cuánto pesa vacío ({ $container })? Mande solo el número, o "{ $container } vacío 15".
ask-safety =
    Para una emergencia, ponga una vez lo que aún no se sabe aquí:
    pon número de emergencia … · pon dirección … · pon primeros auxilios …{ $hasDrum ->
    [yes] {" "}· pon interruptor principal …
   *[no] {""}
  }
ask-nearby = ¿Hay gente delicada cerca? "pon gente delicada hospital", "escuela" o "nadie": así se sabe cuándo no voltear.
ask-ambient = ¿Cuánto marca el aire? Mande "ambiente 12": la diferencia con el aire dice cómo va la pila.
completed = #{ $entry }: { $net } neto ({ $gross } − { $tare })

## Ajustes
coordinators-only = Solo la coordinación puede cambiar eso.
setting-unknown = "{ $name }" no es algo que se ajuste. Pruebe "ajustes".
setting-out-of-range = Ese valor no puede ser para { $name }. No cambió nada.
rule-set-readings = Con lecturas semanales nunca se verán { $needed } { $unit }{ $hasTurns ->
    [yes] {" "}con { $turns } volteos
   *[no] {""}
  }: un día sin lectura no prueba nada. Una pila cerrada se mide cada día.
settings-head = { $site }, { $zone }
settings-units = Unidades: { $mass }, °{ $temperature }
settings-target = Meta: { $tonnes } al año
settings-no-target = Meta: sin poner ("pon meta 60 t")
settings-tare = Tara { $container }: { $kg }
settings-no-tare = Tara { $container }: sin poner
settings-rule-set = Regla de calor: { $name }
settings-no-rule-set = Regla de calor: sin poner ("pon norma vessel-3d")
settings-nearby = Gente delicada cerca: { $nearby ->
    [wards] hospital u hogar
    [classrooms] escuela
    [none] nadie
   *[unsaid] sin decir, se supone que sí ("pon gente delicada nadie")
  }
settings-how = Cambie con "pon …": pon tara carrito 15 · pon unidades lb F · pon zona horaria America/Denver · pon resumen lunes 7:00

## Emergencias: qué hacer ahora, en orden
emergency-drum = APRIETEN EL PARO ROJO, CORTEN LA LUZ. Nadie mete la mano ni se mete. Llamen ya al { $has ->
    [no] número de emergencia
   *[yes] { $number }
  }.
emergency-drum-then = { $hasIsolator ->
    [yes] Se corta en: { $isolator }.{" "}
   *[no] {""}
  }No giren el tambor para soltar a nadie. Nadie entra, ni para rescatar.
emergency-hurt = Paren las máquinas. Vean que sea seguro antes de acercarse.
emergency-hurt-then = Quédense con la persona. Muévanla solo si hay peligro.
emergency-fire = Todos atrás, del lado de donde viene el viento. No la abran ni la volteen.
emergency-fire-then = Ventilador apagado solo si es seguro. No la mojen a medias.
emergency-gas = Afuera y lejos, contra el viento. Sin tocar interruptores, sin llamas.
emergency-needle = No metan la mano, no lo vacíen. Tapa cerrada, etiqueta, aparte.
emergency-needle-then = Se saca con pinzas a un bote para punzantes, solo quien esté capacitado. Siga el procedimiento del sitio.
emergency-needle-pricked = ¿Se picó? Agua corriente y jabón, luego médico de inmediato: las horas cuentan.
emergency-pricked = Agua corriente y jabón, ya. Luego médico de inmediato: las horas cuentan.
emergency-pricked-then = Dejen la aguja donde está: nadie la agarra con la mano.
emergency-help = ¿Alguien herido o en peligro? Paren las máquinas. Nadie mete la mano ni se mete.
emergency-help-then = ¿Qué pasó, y dónde?
emergency-call = Llamen ya { $has ->
    [no] a su número de emergencia
   *[yes] al { $number }
  }.
emergency-call-fire = Llamen a los bomberos: { $has ->
    [no] su número de emergencia
   *[yes] { $number }
  }.
emergency-call-away = Llamen desde lejos { $has ->
    [no] a su número de emergencia
   *[yes] al { $number }
  }.
emergency-call-clinic = Llamen { $has ->
    [no] a su número de emergencia o a la clínica
   *[yes] al { $number } o a la clínica
  }.
emergency-address = Digan dónde: { $text }
emergency-first-aider = Primeros auxilios: { $text }
alarm = Aviso de emergencia{ $has ->
    [no] {""}
   *[yes] {" "}de { $who }
  }: { $what }.
danger-caught = alguien está atrapado
danger-inside-drum = alguien está en el tambor
danger-hurt = alguien está herido
danger-reaching-in = alguien mete la mano
danger-unwell = alguien se siente mal
danger-fire = fuego
danger-smoke = humo
danger-burnt-smell = olor a quemado
danger-needle = aguja
danger-pricked = alguien se picó
danger-gas = gas
danger-help = alguien pide ayuda
alarm-said = "{ $text }"

## Avisos del momento
caution-gloves = Guantes. Lávese las manos antes de comer, beber o fumar. Primero las reglas del sitio.
caution-dust = ¿Seco o polvoso? Mójelo antes, viento a la espalda, mascarilla ajustada (N95, FFP2 o mejor). Primero las reglas del sitio.
caution-wards = ¿Viento hacia gente delicada o tomas de aire? Entonces no se voltea ni se cierne. Primero las reglas del sitio.
caution-wind = Hay viento: voltee y cierna a una hora más calma, viento a la espalda. Primero las reglas del sitio.
caution-lift = Elevador: cadena puesta, nadie entre él y la máquina cuando se mueve. Siga el procedimiento del sitio.
caution-lock-out = Antes de abrir o entrar: paro apretado, corriente con candado y etiqueta de quien trabaja ahí. Siga el procedimiento del sitio.
caution-electrician = Dentro de un tablero: solo un electricista con licencia. Valen los códigos locales.
caution-guards = Las guardas no se quitan mientras gira; solo con la corriente bajo candado. Siga el procedimiento del sitio.
caution-pinch = Con el tambor girando: manos, mangas y pelo lejos de rodillos y cadena. Siga el procedimiento del sitio.
caution-hot-core = Está caliente adentro y el vapor quema: ábrala despacio, viento a la espalda. Primero las reglas del sitio.
caution-lifting = Pesado: ruédelo, use el elevador, o entre dos. Primero las reglas del sitio.
caution-tetanus = Lave toda cortada de inmediato. ¿Vacuna del tétanos al día? Pregunte en su clínica.
caution-clean-tools = De lo crudo a lo terminado: herramientas, botes y botas limpias antes. Primero las reglas del sitio.
caution-sharps = Punzantes: no meta la mano, no lo vacíe. Pinzas y bote para punzantes, solo quien sepa. Siga el procedimiento del sitio.
caution-fire = Ahí hay humo o demasiado calor: no la abra ni la voltee, aparte a la gente. Si humea, llame a los bomberos.

## Idioma, personas, privacidad
language-set = Listo, en español.
language-unknown = Inglés, francés o español: ¿cuál?
forgotten =
    Su nombre, sus mensajes y lo que decían quedan borrados, también las notas.
    Las líneas se quedan, solo con el número { $number }: cada línea de la bitácora va encadenada a la anterior, y los pesos deben seguir cuadrando.
    Las copias de antes guardan el nombre hasta que otras nuevas las reemplacen.
person-numbered = persona n.º { $number }
role-whom = Conteste un mensaje de esa persona con "haz coordinador", o elija:
role-given = { $who } ahora también coordina.
role-had = { $who } ya coordina.
role-who = En la coordinación: { $list }
role-nobody = Todavía nadie coordina aquí.

## Listas de líneas
mine-nothing = Hoy no ha anotado nada.
mine-head = { $count ->
    [one] Lo suyo de hoy, una línea:
   *[other] Lo suyo de hoy, { $count } líneas:
  }
show-who = Lo anotó { $who }, { $date }
show-pictures = { $count ->
    [one] Una foto guardada.
   *[other] { $count } fotos guardadas.
  }
shown-voided = #{ $entry } se anuló o se reemplazó: vea #{ $by }.
why-nothing = Ninguna cuenta en mi última respuesta. Pregunte tras una mezcla, el espacio del tambor, las existencias, una prueba, un total.

accepts-yes = { CAP($what) }: sí, está en la lista del sitio.
accepts-no = { CAP($what) }: no, la lista del sitio lo deja fuera.
accepts-not-on-list = { CAP($what) } no está en la lista del sitio. Apártelo y pregunte a la coordinación.

paper-export = La bitácora del { $from } al { $to }, en un archivo:
paper-whole = Toda la bitácora hasta el { $to }, en un archivo:
paper-report = El informe del { $from } al { $to }:
paper-coordinators = Solo la coordinación puede tener la bitácora en un archivo.
paper-failed = No se pudo hacer el archivo. En la máquina: npm run -s { $what }
paper-saved = Archivo: { $path }
guest-sets-nothing = Desde aquí no se ajusta nada: pide a quien coordina que lo mande en el grupo.
guest-too-late = #{ $entry } tiene más de una hora: pide a quien coordina que la anule.
share-link = Una página para { $site }: con este enlace se anota y se pregunta, sin cuenta.
share-address = { $link }
share-print = Imprímelo y cuélgalo junto a la báscula. "comparte nuevo" termina todos los enlaces y hace uno nuevo.
share-old-ended = Todos los enlaces de antes terminaron: cuelga este.
share-here-only = Puede que esta dirección solo sirva en esta máquina: para teléfonos, primero "fija dirección de la página https://…".
share-no-page = La página está cerrada aquí: arranca sin --no-page, o "fija dirección de la página https://…".

## Ayuda
help-log = Anote lo que hizo: carrito 61 kg, astillas 12 · 3 carritos 61 58 70 · B 41 43 39, ambiente 12 · volteamos B · tapada B con lona
help-log-drum = Tambor: vaciamos el tambor en C · tambor auto 45 min ventilador bajo · tambor lleno 3/4
help-log-piles = Pilas: empezamos pila E · C está llena · juntamos A con B · 3 carretillas de C a B
help-ask = Pregunte: qué hay que hacer · semana · año · estado de las pilas · ¿cómo va B? · vienen 3 carritos, ¿cuántas astillas? · por qué
help-mend = Corrija: deshacer · perdón 56 no 58 · era C no B · o conteste el mensaje
help-set = Ajuste: carrito vacío 16 · pon meta 60 t · ajustes · english please
help-danger = Herido, humo, aguja: solo dígalo. Primero llame a su número de emergencia.
new-1 = { $site }: bienvenida. Ocho líneas para empezar con seguridad; primero las normas del sitio.
new-2-call = Emergencia: { $number }{ $hasAddress ->
    [yes] , estamos en { $address }
   *[no] {""}
  }
new-2-no-call = Emergencia: aquí no hay número puesto, pregunte antes de empezar
new-2-aid = primeros auxilios: { $who }
new-3 = Las pilas están calientes por dentro: vapor y 60 °C o más. Ábralas despacio, de espaldas al viento, nunca suba a una ladera.
new-3-drum = Nunca meta el brazo ni el cuerpo en el tambor. Paro pulsado y corriente bloqueada{ $hasIsolator ->
    [yes] {" "}({ $isolator })
   *[no] {""}
  } antes de que nadie lo abra.
new-4 = Guantes, manos lavadas después, nada de comer aquí. Material seco y polvoriento: mójelo, y mascarilla ajustada
new-4-near = { $near } cerca{ $hasPoint ->
    [yes] {" "}(al { $point })
   *[no] {""}
  }: no se voltea cuando el viento va hacia allí
new-5 = Pese cada { $container } lleno; sus { $tare } en vacío se restan solos: "{ $container } { $gross }"
new-5-no-tare = Pese cada { $container } lleno; diga una vez su tara: "{ $container } vacío 16"
new-6 = Añada las astillas que diga la respuesta y apriete un puñado: una gota o dos está bien.
new-6-recipe = Aquí { $chips } de astillas por { $food } de comida, y apriete un puñado: una gota o dos está bien.
new-7 = Aguja o punzante: no meta la mano. Tapa cerrada, aparte, y dígalo aquí.
new-8 = ¿Duda? "qué hay que hacer" da las tareas, "ayuda" dice cómo.

## La mezcla
limit-recipe = la receta
limit-structure = lo grueso
limit-moisture-high = el agua
limit-moisture-low = lo seco
limit-cn-low = C:N
limit-cn-high = C:N
limit-cap = lo fino
limit-stock = la existencia
limit-room = el espacio en el tambor
unit-days = días
unit-hours = h
state-open = llenándose
state-closed = cerrada
state-ready = lista
state-gone = ya no está

mix-basis-typical = valores típicos
mix-basis-test = por su prueba
mix-of = { CAP($place) }
mix-also-add = Y { $one }{ $what } de { $material } (unos { $kg }).
mix-enough = Mezcla de hoy: cerca de { $pct } de agua ({ $range }). Las astillas alcanzan; apriete para ver: una o dos gotas.
mix-wet-add = Mojada: cerca de { $pct } de agua ({ $range }, { $basis }). Agregue { $one }{ $what } de { $material } (unos { $kg }){ $hasSqueeze ->
    [yes] {" "}y apriete: una o dos gotas
   *[no] {""}
  }.
mix-add = Cerca de { $pct } de agua ({ $range }, { $basis }), { $asks }. Agregue { $one }{ $what } de { $material } (unos { $kg }){ $hasSqueeze ->
    [yes] {" "}y apriete: una o dos gotas
   *[no] {""}
  }.
mix-squeeze = Cerca de { $pct } de agua ({ $range }, { $basis }). Apriete un puñado: una o dos gotas está bien.
mix-squeeze-or-add = Cerca de { $pct } de agua ({ $range }, { $basis }). Apriete: una o dos gotas; si escurre, agregue { $one }{ $what } de { $material } (unos { $kg }).
mix-infeasible = Cerca de { $pct } de agua ({ $range }): no se arregla con lo que hay ({ $limit }{ $hasOther ->
    [yes] , { $other }
   *[no] {""}
  }). { $hasBest ->
    [yes] Lo mejor: { $one }{ $what } de { $material }, para cerca de { $after }.
   *[no] Nada de aquí ayuda.
  }
mix-nothing-today = Hoy no se ha pesado nada. Mande "vienen 3 carritos, ¿cuántas astillas?" para planear.
mix-nothing-there = Hoy no fue nada para la mezcla a { $place }.
mix-no-food-today = Hoy no se pesó comida: no hay mezcla que calcular.
mix-hand-right = Bien por su prueba: cerca de { $pct } de agua ({ $range }).
mix-hand-dry = Seca por su prueba: cerca de { $pct } de agua ({ $range }). No se sabe cuánto hay adentro: ningún número.
mix-hand-wet = Mojada por su prueba: cerca de { $pct } de agua ({ $range }). No se sabe cuánto hay adentro: ningún número.
planned = Unos { $kg } de comida ({ $low } a { $high }): { $hasAdd ->
    [yes] { $one }{ $what } de { $material } (unos { $chips })
   *[no] no más astillas, bastan las que hay
  }.
planned-published = Unos { $kg } de comida, pesos publicados ({ $low } a { $high }): { $hasAdd ->
    [yes] { $one }{ $what } de { $material } (unos { $chips })
   *[no] no más astillas
  }. Pese para saber.
planned-no-weight = Aquí no se sabe cuánto pesa eso ({ $container }): pese unos, o ponga sus litros.
planned-first-on-floor = Primero 1 { $what } en el fondo del tambor.
room-yes = Sí: el tambor quedaría lleno al { $fill }.
room-no = No. Descargue antes unos { $kg }{ $hasDays ->
    [yes] ; la carga más vieja { $days ->
        [0] es de hoy
        [one] lleva 1 día
       *[other] lleva { $days } días
      }
   *[no] {""}
  }.
room-look = La cuenta es aproximada: mire por la ventana y mande "tambor lleno 3/4".
room-unknown = Aquí no se sabe el volumen del tambor: no se puede calcular el espacio.
room-no-drum = Este sitio no tiene tambor.
why-drum = { $loads ->
    [one] Una carga
   *[other] { $loads } cargas
  } en la bitácora, menos lo que salió y lo que se redujo: unos { $kg } adentro.
why-mix-part = { CAP($material) } { $kg }: { $pct } de agua ({ $range }), C { $carbon } %, N { $nitrogen } % de lo seco ({ $from }).
figure-said = como se dijo
figure-measured = medido
figure-site = puesto aquí
figure-learned = aprendido aquí
figure-published = publicado
figure-memory = de memoria
figure-derived = calculado
mix-taken-typical-values = Supuesto: valores típicos, con su margen en la respuesta.
mix-taken-left-out = Fuera: { $material }, ninguna tabla lo conoce.
mix-taken-test = Supuesto: su propia prueba hasta la próxima carga.
why-formula = { $formula }
formula-mix = Agua: la masa de cada carga por su agua, entre toda la masa. C:N: todo el carbono entre todo el nitrógeno, nunca un promedio.
why-mix-density = Densidad { $density }; aire { $air } % según dos fórmulas publicadas, { $likely } % con todo el margen.
why-source = Fuente: { $text }

## Calor
band-asked-for = { CAP($place) } { $celsius }: tan caliente como pide su regla. No más de lo necesario; lea otra vez hoy y mire si está seca.
band-turn-soon = { CAP($place) } { $celsius }: caliente. Voltéela en estos días y vea si está seca.
band-act-today = { CAP($place) } { $celsius }: demasiado. Voltéela hoy, hágala más chica, revise el agua; lea otra vez hoy.
band-fire-watch = { CAP($place) } { $celsius }: vigilar fuego. Lea a varias profundidades, agua a la mano, avise a la coordinación.
band-do-not-open = { CAP($place) } { $celsius }: NO LA ABRAN NI LA VOLTEEN. Gente atrás, ventilador apagado si es seguro, llamen a los bomberos. No la mojen a medias.
band-act-at-once = { CAP($place) } { $celsius }: NO LA ABRAN NI LA VOLTEEN. Gente atrás, llamen a los bomberos ya. No la mojen a medias.
band-smoke = { CAP($place) } humea (#{ $entry }): NO LA ABRAN NI LA VOLTEEN. Gente atrás, ventilador apagado solo si es seguro, llamen a los bomberos. No la mojen a medias.
band-smoke-somewhere = Se vio humo (#{ $entry }), sin saber dónde: NO ABRAN NI VOLTEEN. Gente atrás, ventilador apagado solo si es seguro, llamen a los bomberos. No mojen a medias.
heat-rise = { CAP($place) }: { $rise } sobre el aire ({ $ambient }{ $standIn ->
    [yes] {", pronóstico"}
   *[no] {""}
  }).
heat-near-ambient = { CAP($place) }: { $rise } sobre el aire ({ $ambient }{ $standIn ->
    [yes] {", pronóstico"}
   *[no] {""}
  }), casi al ambiente.
heat-just-turned = { CAP($place) } { $celsius }: volteada hace menos de un día; una lectura baja aún no dice nada. Mida mañana.
proof-met = { CAP($place) }: { $counted } de { $needed } { $unit } caliente. Tiempo y temperatura cumplidos con estas lecturas; su autoridad decide.
proof-not-yet = { CAP($place) }: { $counted } de { $needed } { $unit } en calor. Próxima lectura a más tardar { $date }, o deja de contar.
proof-none = { CAP($place) }: 0 de { $needed } { $unit } caliente hasta ahora.
proof-cannot-show = { CAP($place) }: no se puede mostrar con estas lecturas ({ $counted } de { $needed } { $unit }).
vectors-met = Atracción de vectores (moscas, ratas): cumplida, { $counted } días a más de { $level }, media de más de { $above }.
vectors-not-yet = Atracción de vectores (moscas, ratas): { $counted } de { $needed } días seguidos a más de { $level }; la media debe pasar de { $above }.
vectors-not-shown = Atracción de vectores (moscas, ratas): no mostrada. Hace falta una lectura cada día durante { $needed } días, todas de más de { $level }, media de más de { $above }.
vectors-cool = Atracción de vectores (moscas, ratas): más de { $level } durante { $needed } días, pero la media de { $mean } no pasa de { $above }.
regulator-decides = Su autoridad decide; esto es solo lo que muestra la bitácora.

## Lo que falla, lo que puede salir, el tambor
heat-not-judged = A { $depth } de hondo: se muestra, no se juzga. La regla pide de { $from } a { $to }.
proof-turns = volteos { $counted } de { $needed }
reason-no-readings = aún sin lecturas
reason-not-at-depth = ninguna lectura entre { $fromCm } y { $toCm } de hondo
reason-in-doubt = { $readings } lecturas en duda desde { $since }: la sonda falló su prueba
reason-too-short = { $counted } de { $needed } { $unit } seguidos
reason-turns-short = { $counted } de { $needed } volteos en calor
reason-mean-too-low = la media es { $meanCelsius }; se pide más de { $aboveCelsius }
reason-low = { $celsius } ({ $localDate }) es menos de { $levelCelsius }
reason-above-ceiling = más de { $upperCelsius } ({ $localDate }), el techo de la regla
reason-just-turned = { $celsius } ({ $localDate }): recién volteada, no se juzga
reason-gap-within = demasiado tiempo entre dos lecturas { $from }: ese tiempo no prueba nada
reason-gap = sin lectura entre { $from } y { $to }: ese día no prueba nada
reason-fresh = material fresco { $localDate } (#{ $entry }): la cuenta empieza de nuevo
reason-joined-unproven = unida { $localDate } (#{ $entry }) con lo no probado: empieza de nuevo
reason-proof-in-doubt = lo que entró { $localDate } (#{ $entry }) lo probó una sonda que falló: empieza de nuevo
reason-cover-unproven = cubierta { $localDate } con compost no probado (#{ $entry })
reason-still-open = aún recibe material
reason-aeration-unknown = nadie ha dicho si los tubos llevan soplador
reason-aeration-breathing = tubos que solo respiran no son aireación forzada
reason-fed-daily = el tambor se alimenta a diario: lo fresco reinicia la cuenta
reason-exit-only = la temperatura de salida sola no prueba nada
reason-one-point = un punto no basta: varios, y decide el más frío
reason-residence-unknown = el tiempo mínimo dentro no está puesto (se piden { $neededHours } h)
reason-residence-short = tiempo mínimo dentro { $hours } h de { $neededHours } h
reason-short-circuit-unknown = nadie ha dicho que nada pasa antes
reason-short-circuit = una parte pasa antes
reason-prove-in-closed-pile = se prueba en la pila cerrada
why-rule = { CAP($place) }, regla { $rule }: { $level } o más durante { $needed } { $unit }; decide el punto más bajo entre { $from } y { $to }.
why-counted = { $has ->
    [yes] Contado: { $counted } de { $needed } { $unit }, desde { $since }.
   *[no] Aún no cuenta nada.
  }
why-day = { $date }: { $how ->
    [counts] la más baja { $celsius }, cuenta
    [low] la más baja { $celsius }, demasiado baja
    [above-ceiling] la más baja { $celsius }, demasiado alta para la regla
    [shadow] la más baja { $celsius }, recién volteada
    [not-at-depth] sin lectura a la profundidad pedida
    [in-doubt] el termómetro está en duda
   *[none] sin lectura
  }
why-reason = Porque: { $reason }.
why-stage = { CAP($place) }: lo más caliente { $hottest }, aire { $air }{ $standIn ->
    [yes] {", pronóstico"}
   *[no] {""}
  } (media de los últimos días): { $stage }.
why-forecast = Pronóstico: la diferencia con el aire desde el último volteo baja como exponencial; { $readings } días de lecturas, intervalo 4 de 5.
why-symptom = Según el libro
why-stock = Uso: unos { $kg } al día en dos semanas, contando días sin uso.
why-stock-formula = Queda: el último conteo, más entregas, menos uso. Días: lo que queda entre el uso medio al día.
taken-depth-unknown = Supuesto: las lecturas sin profundidad son de entre { $fromCm } y { $toCm }.
taken-approximate-reading = Supuesto: lecturas «unos» tal cual ({ $readings }).
taken-piece-size = Supuesto: ningún trozo mayor de { $mm } mm.
taken-held-in-vessel = Supuesto: todo estuvo dentro todo el tiempo.
taken-aeration-forced = Supuesto: el aire se sopla. Dígalo: «set aeration forced» o «set aeration breathing».
taken-roofed = Supuesto: bajo techo.
taken-gap-between-readings = Supuesto: entre lecturas de hasta { $minutes } min siguió caliente.
taken-days-by-readings = Supuesto: un día cuenta por su lectura. En horas enteras: «pon cuenta de días 72 h».
taken-turn-spacing-by-dates = Supuesto: al menos { $days } días entre volteos, por fecha.
taken-inherited-proof = Supuesto: la prueba de la pila de donde viene (#{ $entry }).
taken-ambient-mean = Supuesto: el aire como media de { $days } días.
taken-ambient-stays = Supuesto: el aire sigue igual ({ $celsius }).
taken-volume-unknown = Supuesto: no es un montón pequeño (volumen desconocido).
taken-lab-unit = Supuesto: el resultado está en { $unit }.
taken-site-band-limited = Supuesto: { $celsius } para { $band }; ese no puede subirse.
taken-regulator-accepts = Supuesto: su autoridad acepta probar así un tambor. Pregunte antes.
stage-heating = calentándose
stage-active = activa
stage-cooling = enfriándose
stage-curing = madurando
stage-near-ambient = cerca del aire
stage-cannot-tell = no se sabe
pile-stage = { $stage }
cannot-tell-stale = última lectura muy vieja
cannot-tell-just-turned = recién volteada, aún no se sabe
cannot-tell-frozen = helada, no se sabe
cannot-tell-cold-core = muy fría para saber
cannot-tell-dry = seca, no se sabe
cannot-tell-tiny = montón pequeño, no se sabe
cannot-tell-no-ambient = aire desconocido
cannot-tell-never-hot = nunca ha estado caliente
ready-nothing-missing = No falta nada en este libro. Vaya a ver y envíe «{ $send }».
ready-not-yet = No está lista
ready-cannot-tell = Aún no se sabe
lacks-been-hot = no ha estado caliente
lacks-age = { $days } de { $needed } días desde lo fresco
lacks-curing = madurada { $days } de { $needed } días
lacks-turned = volteada { $turns } de { $needed } veces
lacks-near-ambient = { $riseC } sobre el aire
lacks-no-reheating = volvió a calentarse
lacks-labs = resultados de laboratorio
lacks-wait = tiempo
lacks-turn = un volteo
lacks-reading = una lectura nueva
lacks-reading-after-turn = una lectura dos días tras un volteo
lacks-ambient-reading = la temperatura del aire
lacks-moisture-check = una prueba de puño
lacks-moisture-mended = humedad por corregir
lacks-milder-weather = un volteo con tiempo más suave
lacks-thaw = un deshielo
lacks-start-date = su fecha de inicio
lacks-more = { $count } más
forecast = Cerca del aire hacia { $on } ({ $from } a { $to }, 4 de cada 5 veces).
forecast-open = Cerca del aire hacia { $on } como pronto ({ $from } o después; sin final aún).
no-forecast-too-few-readings = Aún sin pronóstico: hacen falta tres días de lecturas desde el último volteo.
no-forecast-not-falling = Sin pronóstico: la diferencia no baja.
no-forecast-frost = Sin pronóstico a través de heladas.
no-forecast-no-ambient = Sin pronóstico: falta la temperatura del aire de esos días.
cause-likely = Probable: { $cause }
cause-perhaps = Quizá: { $cause }
cause-unknown = Eso no encaja con ninguna causa conocida. Pregunte a un coordinador.
ask-ammonia-or-rotten = ¿Huele a amoníaco o a podrido?
ask-drips-or-crumbles = Apriete un puñado: ¿gotea, aguanta o se desmorona?
ask-drips-or-not = Apriete un puñado: ¿gotea?
ask-rain-or-mix = ¿Es lluvia que entró o la mezcla misma?
ask-added-or-left = ¿Se regó o mezcló hace poco, o se dejó quieta?
ask-food-showing = ¿Se ve comida en la superficie?
answer-ammonia-or-rotten-ammonia = amoníaco
answer-ammonia-or-rotten-rotten = podrido
answer-drips-or-crumbles-drips = gotea
answer-drips-or-crumbles-crumbles = se desmorona
answer-drips-or-crumbles-right = aguanta
answer-drips-or-not-drips = gotea
answer-drips-or-not-right = no gotea
answer-rain-or-mix-rain = lluvia
answer-rain-or-mix-mix = la mezcla
answer-added-or-left-added = regada o mezclada
answer-added-or-left-left = se dejó quieta
answer-food-showing-yes = se ve comida
answer-food-showing-no = no se ve comida
cause-fire-risk = cerca del fuego
cause-just-turned = solo el volteo
cause-frozen = helada
cause-too-rich = demasiado rica (mucho nitrógeno)
cause-no-air = sin aire dentro
cause-too-wet = demasiado húmeda
cause-too-dry = demasiado seca
cause-too-lean = demasiado pobre (mucha madera)
cause-too-small = montón muy pequeño
cause-too-large = montón muy grande
cause-too-much-air = demasiado aire
cause-air-blocked = aire tapado
cause-still-starting = aún arranca
cause-spent = queda poco que comer
cause-uneven = desigual
cause-rain = lluvia
cause-fresh-food-bare = comida fresca al aire
cause-spills = derrames
cause-thin-bulking = poco material grueso
cause-woody = trozos de madera
cause-overfed-drum = demasiada carga a la vez
cause-not-done-before = no estaba terminada
cause-watered-or-mixed = el agua o la mezcla la despertó
cause-probe = la sonda
cause-work-and-wind = el volteo y el viento
cure-add-water-while-turning = añadir agua al voltear
cure-add-dry-carbon = añadir astillas u hojas secas
cure-add-coarse-chips = añadir astillas gruesas
cure-add-fine-material = añadir algo más fino
cure-add-nitrogen = añadir restos de comida o césped
cure-cover-mature-compost = cubrir con compost maduro
cure-cover-fresh-food = cubrir enseguida lo fresco
cure-cover-from-rain = proteger de la lluvia
cure-insulate = abrigarla
cure-turn = voltear
cure-turn-outside-in = voltear lo de fuera hacia dentro
cure-make-bigger = hacerla más grande
cure-make-smaller = hacerla más pequeña
cure-check-air = ver que entra aire
cure-fan-on = ventilador en marcha
cure-less-air = menos aire
cure-squeeze-test = apretar un puñado: una gota o dos está bien
cure-read-again-tomorrow = medir otra vez mañana
cure-read-at-depth = medir en lo hondo
cure-wait = esperar
cure-wait-for-thaw = esperar el deshielo
cure-leave-undisturbed = no tocarla
cure-start-with-hot-material = arrancar con material caliente
cure-check-readiness = preguntar si está lista
cure-keep-curing = dejar madurar
cure-drain-pad = drenar la losa
cure-collect-liquid = recoger el líquido
cure-return-liquid-to-unsanitised-only = el líquido solo va a pilas no probadas
cure-same-day-cover = cubrir la comida el mismo día
cure-clean-spills = limpiar derrames
cure-closed-containers = recipientes cerrados
cure-screen-out-overs = cribar los gruesos
cure-shred = triturar
cure-feed-less = cargar menos unos días
cure-turn-drum-more = girar el tambor más a menudo
cure-note-wind-and-work = anotar el viento y qué se hacía
cure-turn-when-wind-is-away = voltear cuando el viento se aleje de los vecinos
cure-check-probe = probar la sonda en hielo fundente
cure-do-not-open-or-turn = NO ABRIR NI VOLTEAR
cure-people-back = gente atrás
cure-fan-off-if-safe = ventilador apagado solo si es seguro
cure-call-fire-service = llamar a los bomberos
cure-do-not-half-wet = no mojar a medias
fault-elsewhere = No la use: corte y candado antes de abrir. Reparar, solo personal formado. Anote la hora.
spill-first = Aleje a la gente, absorba con astillas, barra, lejos del desagüe; luego envíe «derrame limpio».
contamination-first = Apártelo, no separe punzantes a mano. ¿De qué origen? Dígalo: va a sus comentarios.
complaint-asks = Para la autoridad falta anotar
complaint-when = cuándo
complaint-where = dónde
complaint-nature = qué olor
complaint-strength = qué fuerza (nula, leve, fuerte)
complaint-wind = viento
complaint-weather = tiempo
complaint-being-done = qué se hacía
complaint-done-about-it = qué se hizo
complaint-who-answers = quién responde
complaint-how = Responda a este mensaje, o envíe «nota: … #{ $entry }». Deje el nombre de quien se queja fuera del grupo: déselo directamente a la coordinación.
complaint-complete = Queja #{ $entry }: está anotado todo lo que pide la autoridad.
stopped-people = Nadie dentro ni metiendo el brazo, todos lejos, guardas puestas. Candados: solo los quita quien los puso; decide su procedimiento.
stopped-jam = Un atasco se suelta con fuerza: déjelo al personal formado.
stopped-power = Pregunte a la compañía o a un electricista; no abra ningún tablero.
stopped-loads = Sin cargas nuevas. Anote la hora y el calor («{ $log }»); vigile calor y olor. Llame a { $has ->
    [yes] { $whom }
   *[no] un coordinador
  }{ $hasNow ->
    [yes] {" "}ya
   *[no] {""}
  }{ $hasHours ->
    [yes] {" "}tras { $hours } h
   *[no] {""}
  }.
resolved-none = No había abierto un problema así.
resolved-after = Abierto desde { $date } (#{ $old }){ $has ->
    [yes] . Hecho: { $done }
   *[no] {""}
  }.
probe-failed = Falla por { $off }: las lecturas{ $has ->
    [yes] {" "}desde { $since }
   *[no] {" "}hasta hoy
  } no prueban nada hasta una buena prueba. Use otro.
probe-good = Bien: a menos de { $within } de { $against }.
probe-good-again = Bien otra vez. Lo leído antes{ $has ->
    [yes] {" "}desde { $since }
   *[no] {""}
  } sigue en duda: no prueba nada.
probe-unclear = Sin juzgar: en agua con hielo debe leer { $against } (a { $within }).
drum-interval-outside-site-rule = Cada { $everyMin }: fuera de la regla del sitio ({ $low } a { $high }).
drum-interval-outside-check-value = Cada { $everyMin }: máquinas de un tipo suelen girar cada { $low } a { $high } (práctica común). Decide el fabricante.
drum-fan-low-in-normal-running = En marcha normal basta bajo; alto seca y enfría.
drum-fan-lowest-while-freezing = Con helada: ventilador al mínimo o apagado, { $maxHours } h como mucho. El tambor necesita aire: luego se vuelve a poner.
drum-fan-off-for-a-time = Apagado { $leftHours } h más como mucho: el tambor necesita aire. Lo recordaré aquí.
drum-fan-back-on = El tambor necesita aire: ventilador otra vez en bajo.
drum-odour-wetness-first = Primero la humedad: apriete un puñado del tambor; una gota o dos está bien, si no, astillas.
drum-odour-then-more-air = Luego más aire: un punto más de ventilador.
drum-odour-mind-the-exhaust = Mire adónde va el aire: vecinos, ventanas, viento.
fan-reminder = { CAP($place) }: el ventilador lleva { $hours } h apagado. Necesita aire: póngalo en bajo («tambor ventilador bajo»).
drum-level-room = Unos { $litres } dentro (unos { $kg }); sitio para unos { $room } más.
drum-level-full = Unos { $litres } dentro (unos { $kg }): lleno. Descargue antes de la próxima carga.
discharge-oldest = Lo más viejo llevaba dentro { $days ->
    [one] 1 día
   *[other] { $days } días
  }.
discharge-proven = Va a { $place } con el calor probado en el tambor, si su autoridad lo acepta.
discharge-fresh = Cuenta como fresco en { $place }: sus días de calor empiezan ahora.
drum-fill = lleno al { $pct } más o menos ({ $range })
drum-fill-level = lleno al { $pct } más o menos ({ $range }, visto { $date })
drum-empty = { CAP($place) }: vacío, según el libro
drum-no-volume = volumen desconocido aquí
drum-coldest = la más fría (#{ $entry }, { $days ->
    [0] de hoy
    [one] 1 día dentro
   *[other] { $days } días dentro
  }) ha visto { $celsius } como mucho
drum-unbooked = lo más viejo no está en el libro
drum-feed = Recibe unos { $kg } al día (media de 7 días)
due-fill = estará lleno
due-stay = lo más viejo ya cumplió
drum-due = próxima descarga en unos { $days ->
    [one] 1 día
   *[other] { $days } días
  } ({ $why })
drum-due-now = descargue ya ({ $why })
drum-due-not = sin descarga a la vista: se reduce tan rápido como recibe
drum-due-unknown = próxima descarga sin saber: sin cargas en 7 días
drum-proof-ways = Un tambor cargado a diario prueba el calor dentro si su autoridad lo acepta («pon vía tambor adentro»), o si no en la pila cerrada.
drum-proof-pile = El calor se prueba en la pila cerrada, no en el tambor.
stock-unknown = { CAP($material) }: nunca contado aquí. Envíe «quedan 2 m3 de { $material }» o una entrega.
stock-left = { CAP($material) }: quedan unos { $litres } (unos { $kg }).
stock-short = { CAP($material) }: se usó más de lo que sabe el libro. Cuente: «quedan 2 m3 de { $material }».
stock-none = { CAP($material) }: no queda nada. Pida ya.
stock-no-use = Sin uso en dos semanas, así que no hay días que dar.
stock-days = { $days ->
    [0] Para menos de un día
    [one] Para 1 día
   *[other] Para { $days } días
  } al ritmo actual ({ $low }{ $hasHigh ->
    [yes] {" "}a { $high }
   *[no] {" "}o más
  }).{ $order ->
    [yes] {" "}Pida ya.
   *[no] {""}
  }
doubt-held-pile = #{ $entry } { $place } está retenida: nada sale sin que lo permita un coordinador.
choice-allow = permitir
choice-not-taken = no se sacó
hold-laid = { CAP($place) } está RETENIDA ({ $why }): nada sale sin un coordinador.
hold-trace = { $count ->
    [0] Nada ha salido de { $place } según el libro.
    [one] Salió compost de { $place } una vez: vea quién lo recibió.
   *[other] Salió compost de { $place } { $count } veces: vea quién lo recibió.
  }
lab-vessel = Prueba en vaso: { $rise } sobre la sala, clase { $class } (V estable, I fresco{ $edge ->
    [yes] ; entre dos clases se toma la menos estable
   *[no] {""}
  }){ $mature ->
    [yes] , y maduro por la prueba de 8 °C tras 21 días de maduración
   *[no] {""}
  }. No dice nada del calor de la pila misma.
hold-still = { CAP($place) } sigue RETENIDA ({ $why }) hasta que un coordinador la libere.
hold-stays = Sigue retenida por #{ $entry }: solo un coordinador puede deshacerlo.
hold-said = lo dijo un coordinador
button-trace = Rastrear { $place }
setting-hold = { $place } retenida: { $why }
setting-hold-off = retención de { $place } levantada
removal-unproven = { CAP($place) }: anotado, pero
gap-hold = retenida ({ $why }, #{ $entry }, { $date })
gap-no-rule-set = no hay regla de calor puesta
gap-not-yet = { $counted } de { $needed } días u horas en calor mostrados
gap-cannot-show = sus lecturas no pueden mostrar el calor
gap-vectors = atracción de vectores { $counted } de { $needed } días
gap-lab-failed = { $analyte } { $value }, límite { $max } { $unit }
gap-lab-unclear = { $analyte }: el resultado no permite saberlo
gap-lab-missing = { $count ->
    [one] falta 1 resultado de laboratorio
   *[other] faltan { $count } resultados de laboratorio
  }
gap-lab-without-sample = el resultado #{ $entry } no tiene muestra
gap-problem = sigue abierto: { $topic } (#{ $entry })
gap-not-ready = { $count ->
    [one] falta 1 señal de madurez
   *[other] faltan { $count } señales de madurez
  }
full-read-daily = Mida { $place } cada día desde ahora: un día sin lectura no prueba nada.
ready-but = Anotado. El libro no lo muestra
joined-held = La retención va con ella: { $place } está retenida ({ $why }).
joined-proven = Ambas tuvieron calor bastante: { $place } lo conserva según estas lecturas.
joined-restarts = No ambas estaban probadas: la cuenta de { $place } empieza de nuevo.
split-proven = { CAP($place) } se lleva su prueba de calor.
split-unproven = { CAP($place) } se lleva sus lecturas; aún sin calor bastante.
transfer-restarts = Lo que entró no estaba probado: la cuenta de { $place } empieza de nuevo.
cover-unproven = Ese compost no viene de una pila probada: puede traer de vuelta lo que el calor mató.
trace-held = No. { CAP($place) } está RETENIDA ({ $why }, #{ $entry }, { $date }): solo un coordinador puede dejarla salir.
trace-may = { CAP($place) }: no falta nada en este libro.
trace-not-yet = { CAP($place) }: todavía no.
trace-missing = Falta
trace-went = Fue a
trace-to = { $to } { $amount } ({ $date }, #{ $entry })
trace-nobody = Nadie ha recibido de ella aún.
trace-in = Vino de
trace-no-source = Sin orígenes en el libro para { $place }.
trace-kin = Unida con o separada de
rule-set-minutes = Pide { $needed } { $unit } sin hueco: lecturas cada { $minutes } como mucho. Ni semanales ni diarias lo muestran.
ask-aeration = ¿Los tubos llevan soplador o solo respiran? Respirar no es aireación forzada.
answer-aeration-forced = con soplador
answer-aeration-breathing = solo respiran
qualifier-found = hallado
fact-wet = húmeda
fact-dry = seca
fact-moisture-right = humedad buena
fact-moisture-unknown = sin prueba de puño reciente
fact-just-turned = volteada hace menos de un día
fact-frozen = helada
fact-deep-cold = aire bajo cero
fact-been-hot = estuvo caliente
fact-never-hot = nunca caliente
fact-young = menos de una semana
fact-old = tres semanas o más
fact-rich-mix = C:N menor de 20
fact-lean-mix = C:N mayor de 40
fact-fan-off = ventilador apagado
fact-small = menos de 1 m³
fact-hot = más de 65 °C
fact-fire-hot = caliente como antes de un fuego
fact-smoke = humo

## Pilas y tambor
no-piles = Todavía no hay pilas: mande "empezamos pila A".
place-unknown = { CAP($place) }: no se conoce aquí.
pile-became = { CAP($place) } ahora es { $successor }.
pile-state = { CAP($place) }, { $state }
pile-last = { $values } ({ $date })
pile-rise = { $rise } sobre el aire{ $standIn ->
    [yes] {" (pronóstico)"}
   *[no] {""}
  }
pile-no-reading = sin lectura todavía
pile-turns = { $count ->
    [one] volteada 1 vez
   *[other] volteada { $count } veces
  }
pile-held = EN ESPERA: { $why }
pile-last-turn = Último volteo: { $date }.
pile-covered = Tapada ({ $layer }) { $date }.
pile-uncovered = Destapada ({ $layer }) { $date }.
pile-feel = Al tacto, { $date }: { $feel }.
pile-problem = Abierto: { $topic } (#{ $entry }, { $date }).
drum-holds = { CAP($place) }: unos { $kg } adentro
drum-oldest = Carga más vieja (#{ $entry }) { $days ->
    [0] de hoy
    [one] 1 día dentro
   *[other] { $days } días dentro
  }
drum-set = Ajuste: { $mode }
drum-read = Leído { $low } a { $high } ({ $date }).
history-nothing = Nada en la bitácora sobre { $place }.
trace-source = { $source } { $kg } ({ $one ->
    [yes] { $from }
   *[no] { $from } a { $to }
  })

## Hoy
weekday-monday = Lun
weekday-tuesday = Mar
weekday-wednesday = Mié
weekday-thursday = Jue
weekday-friday = Vie
weekday-saturday = Sáb
weekday-sunday = Dom
today-head = { $day }: { $count ->
    [one] 1 tarea
   *[other] { $count } tareas
  }
today-nothing = { $day }: no hay pendientes.
today-job = { $n } { $what }: { $why }
today-by = para { $date }
today-since = pendiente desde { $date }
today-taken = lo tiene { $who }
today-more = … y { $count } más
today-later = Después: { $what } ({ $why })
today-send = Mande "{ $first }"
today-send-two = Mande "{ $first }" o "{ $second }"

duty-keep-away = No se acerque a { $place }
duty-read-pile = Leer { $place }
duty-read-drum = Leer { $place }
duty-read-ambient = Leer el aire
duty-turn-pile = Voltear { $place }
duty-cover-pile = Tapar { $place }
duty-discharge-drum = Descargar { $place }
duty-count-stock = Contar la existencia: { $material }
duty-order-stock = Pedir { $material }
duty-make-room = Hacer sitio para una pila
duty-mind-cap = Vigilar el tope por { $per }
duty-ask-source = Preguntar a { $source }
duty-answer-doubt = #{ $entry } { $said }
duty-weigh-empty = Pesar vacío: { $container }
duty-look-again = { CAP($topic) } (#{ $entry })
duty-sweep = Barrer el piso
duty-wash-lift = Lavar el elevador
duty-wash-containers = Lavar los carritos
duty-clean-tools = Limpiar las herramientas
duty-check-scale = Revisar la báscula
duty-check-thermometer = Revisar el termómetro
duty-check-fan = Revisar el ventilador
duty-check-stop-button = Probar el botón de paro
duty-release-pile = Liberar { $place }
duty-take-sample = Tomar muestra de { $place }
duty-chase-results = Pedir los resultados de { $place }
duty-season-chips = Astillas secas bajo techo
duty-season-exit = Aislar la salida
duty-reweigh-empty = Pesar vacío otra vez: { $container }
duty-renew-permit = Renovar: { $what } { $name }
duty-own-duty = { CAP($name) }

why-smoke = se vio humo (#{ $entry }); no la abra ni la voltee
why-too-hot = { $celsius }, demasiado caliente
why-proving = día { $day } de { $needed }; sin lectura hoy no contará
why-closed-unproven = cerrada, calor sin probar todavía
why-weekly = última lectura { $date }
why-never-read = sin leer desde { $date }
why-last-read = última lectura { $date }
why-rise-unknown = sin eso no se sabe la diferencia de { $place }
why-turns-for-proof = volteo { $turn } de { $needed } mientras está caliente
why-smells = huele (#{ $entry })
why-rise-stalled = detenida en { $celsius } desde { $date }
why-turns-in-curing = volteada { $turns } de { $needed } veces en maduración
why-rain-expected = lluvia { $date }
why-snow-expected = nieve { $date }
why-turned-open = destapada desde el volteo, { $date }
why-filling = lleno al { $pct }
why-stayed = la carga más vieja lleva { $days } días
why-used-more-than-known = se usó más de lo que sabe la bitácora
why-days-left = quedan unos { $days } días
why-none-open = { $count ->
    [one] la única pila no recibe material fresco
   *[other] ninguna de las { $count } pilas recibe material fresco
  }
why-nearly-full = { $place }, la última abierta, está al { $pct }
why-near-cap = { $kg } de { $cap }, hasta { $date }
why-over-cap = { $kg }, más que { $cap }, hasta { $date }; rechace cargas
why-not-come = nada desde { $date }, por lo usual cada { $days } días
why-answer-doubt = en espera de una respuesta
why-nets-wait = { $count ->
    [one] un peso neto espera
   *[other] { $count } pesos netos esperan
  }
why-still-open = abierto desde { $date }
why-floor-used = se usó { $date }
why-lift-used = se usó { $date }
why-containers-used = se usaron { $date }
why-tools-used = se usaron { $date }
why-check-failed = falló { $date }
why-last-checked = última revisión { $date }
why-never-checked = sin revisar desde { $date }
why-frost-expected = helada { $date }
why-cold-air = el aire está a { $celsius }
why-weighed-empty = último peso vacío { $date }
why-from-site-file = sin pesar desde { $date }
why-runs-out = vence { $date }
why-ran-out = venció { $date }
why-own-last-done = se hizo { $date }
why-own-never-done = tocaba { $date }, sin hacer todavía
why-nothing-missing = no falta nada en el registro; mírela y dígalo
why-results-missing = faltan { $count } resultados de laboratorio, lo demás está
why-sampled = muestra de { $date }, sin resultados todavía
later-frozen = congelado
later-windy = { $blows ->
    [towards] viento { $hasFrom ->
        [yes] del { $from } {""}
       *[no] {""}
      }hacia las { $near }
   *[unknown] viento, sin dirección conocida; hay { $near } cerca
  }
later-closed = cerrado hasta { $date }
later-postponed = aplazado hasta { $date }{ $hasReason ->
    [yes] {": "}{ $reason }
   *[no] {""}
  }

log-reading = { $place } { $celsius }
log-turned = volteamos { $place }
log-covered = tapada { $place }
log-discharged = vaciamos el tambor
log-level = quedan { $litres } de { $material }
log-delivery = llegaron { $litres } de { $material }
log-load-from = carrito { $kg } de { $source }
log-answer = { $choice }
log-empty = { $container } vacío { $kg }
log-resolved = ya no hay { $topic }
log-check = { $chore }
log-chore = { $chore }
log-done-item = hecho 1
log-emptied = { $place } está vacía
log-started = empezamos { $place }
log-set-date = pon { $what } { $name } { $date }
log-own-done = hecho { $name }
log-sample = muestra { $place }
log-release = { $place } está lista
log-lab-result = { $place } laboratorio plomo 40 mg/kg

duty-which = ¿Cuál? "hecho 2", con su número en la lista.
duty-not-there = { $item }: no está en la lista de hoy. Pregunte antes "qué hay que hacer".
duty-send-figure = { $duty }: mande el dato mismo, "{ $log }".
duty-not-by-word = { $duty }: eso se quita solo cuando la bitácora muestra que pasó.
duty-noted-claim = #{ $entry } Le toca: { $duty }
duty-noted-release = #{ $entry } Devuelta: { $duty }
duty-noted-postpone = #{ $entry } Aplazada a mañana: { $duty }
duty-noted-until = #{ $entry } Aplazada hasta { $until }: { $duty }
duty-noted-done = #{ $entry } Hecho: { $duty }
own-none = Todavía no hay tareas propias: "cada viernes: revisar extintores".
own-line = { $name }: { $every }
weekday-full-monday = lunes
weekday-full-tuesday = martes
weekday-full-wednesday = miércoles
weekday-full-thursday = jueves
weekday-full-friday = viernes
weekday-full-saturday = sábado
weekday-full-sunday = domingo
nth-first = primer
nth-second = segundo
nth-third = tercer
nth-fourth = cuarto
nth-last = último
often-as-said = { $said }
often-once = { $date }
often-workdays = cada día hábil
often-weekends = cada fin de semana
often-weekday = cada { $days }
often-other-weekday = un { $day } sí y otro no
often-days = { $count ->
    [one] cada día
   *[other] cada { $count } días
  }
often-weeks = { $count ->
    [one] cada semana
   *[other] cada { $count } semanas
  }
often-months = { $count ->
    [one] cada mes
   *[other] cada { $count } meses
  }
often-years = { $count ->
    [one] cada año
   *[other] cada { $count } años
  }
often-month-day = el día { $day } del mes
often-month-end = el último día del mes
often-month-nth = el { $nth } { $day } del mes
often-year = el { $date } cada año
often-day = { $day }
often-and = { $first } y { $rest }
often-comma = { $first }, { $rest }
duty-how-often = ¿Cada cuánto? Todavía nada anotado: "cada viernes: { $name }", "cada 2 semanas: { $name }", "el 1 de marzo: { $name }".
closed-not = El sitio no está cerrado.
closed-open = #{ $entry } Abierto otra vez desde hoy.
closed-when = ¿Cerrado hasta cuándo? "cerrado hasta el 2 de enero"
closed-noted = #{ $entry } Cerrado { $from } a { $to }. Lo que puede esperar espera; pilas calientes y problemas siguen.
handover-head = { $count ->
    [0] Nada anotado desde { $date }.
    [one] Una línea desde { $date }:
   *[other] { $count } líneas desde { $date }:
  }
handover-earlier = … y { $count } antes de estas.
line-sum = En total { $kg } neto
week-changed-more = La semana de { $week }, ya enviada, queda con { $kg } más.
week-changed-less = La semana de { $week }, ya enviada, queda con { $kg } menos.

## Semana y año
pace-ahead = por delante de la meta
pace-on-course = en camino a la meta
pace-behind = por detrás de la meta
pace-reached = meta cumplida
pace-cannot-tell = muy pronto para decir
per-week = semana
per-month = mes
week-head = Semana del { $from } al { $to }
week-head-so-far = Esta semana, desde el { $from }
week-feed = Entró: { $kg } neto ({ $loads ->
    [one] 1 carga
   *[other] { $loads } cargas
  })
week-no-feed = Entró: nada pesado{ $over ->
    [yes] {""}
   *[no] {" todavía"}
  }
week-estimated = más unos { $kg } estimados
week-pending = { $count ->
    [one] 1 neto pendiente
   *[other] { $count } netos pendientes
  }
week-special = De eso, { $material } { $kg }; sin eso { $without }
week-compared = Semana anterior { $before }{ $hasUsual ->
    [yes] , por lo usual { $usual }
   *[no] {""}
  }
week-source = { $hasSource ->
    [yes] { $source }
   *[no] sin origen
  } { $kg }
week-source-of = { $material }{ $hasSource ->
    [yes] {" "}{ $source }
   *[no] {""}
  } { $kg }
week-chips = Astillas { $kg }
week-chips-per = { $ratio } por 1 de comida, en peso
week-mix = mezcla cerca de { $pct } de agua ({ $range }){ $hasCn ->
    [yes] , C:N cerca de { $cn }
   *[no] {""}
  }
week-contaminated = Contaminado: { $loads } de { $of } cargas{ $hasSource ->
    [yes] {" "}de { $source }
   *[no] {""}
  }
week-rejected = Devuelto: { $count }{ $hasSource ->
    [yes] {" "}de { $source }
   *[no] {""}
  }
week-problem-ended = { CAP($topic) } (#{ $entry }), terminó { $date }
week-problem-open = Abierto: { $topic } (#{ $entry }) desde { $date }
week-held = En espera: { $count } (vea "qué hay que hacer")
week-pile = { $low } a { $high } ({ $date })
week-pile-one = { $low } ({ $date })
week-proof-met = caliente el tiempo necesario, por estas lecturas
week-proof-not-yet = { $counted } de { $needed } { $unit } caliente
week-proof-cannot-show = el calor no se puede mostrar
week-turnings = { $count ->
    [one] 1 volteo
   *[other] { $count } volteos
  }
week-chores = { $count ->
    [one] 1 labor
   *[other] { $count } labores
  }
week-checks = { $count ->
    [one] 1 revisión
   *[other] { $count } revisiones
  }
week-hours = { $hours } h de trabajo
week-removed = { $kg } de composta salieron
week-removed-litres = { $litres } de composta salieron
week-missed = { $count ->
    [one] 1 tarea sigue abierta
   *[other] { $count } tareas siguen abiertas
  }
week-thanks = Gracias a { $who }.
year-feed = Año: { $kg } desde { $from }
year-target = { $pct } de { $tonnes }
year-no-target = sin meta
year-forecast = Probable: { $low } a { $high } al fin de año, { $pace }.
year-needed = Para llegar: unos { $kg } por semana de aquí en adelante.
year-cap-within = Tope por { $per }: { $kg } de { $cap }.
year-cap = Se pasó el límite ({ $per }): { $kg } de { $cap }.
why-year = Ritmo: lo que entró, más la media de las últimas { $weeks } semanas completas por los días que faltan; el rango acierta 4 de 5 veces (t de Student).
yield-litres = Compost que salió: { $litres } por cada { $per } de comida (sitios grandes { $low } a { $high })
yield-kg = { $kg } por cada { $per } de comida
balance-nothing = No entró nada desde { $from }: no hay balance.
balance-in = Entró desde { $from }: { $kg } (comida { $feed }, astillas y otros { $chips }{ $hasWater ->
    [yes] , agua { $water }
   *[no] {""}
  }){ $hasEstimated ->
    [yes] , de ello { $estimated } estimado
   *[no] {""}
  }
balance-out = Salió, pesado: compost { $kg }, rechazo y otros { $residue }{ $hasLitres ->
    [yes] . Sin pesar, fuera del balance: { $litres } de compost
   *[no] {""}
  }
balance-lost = Se va en gas y vapor, según lo publicado: { $low } a { $high }
balance-left = En las pilas o sin explicar: { $low } a { $high }
balance-too-much = Salieron { $kg } más de lo posible: un peso está mal, o falta una entrada en el libro.
balance-ash = { CAP($place) } por sus cenizas ({ $first } → { $last }, #{ $entry }; inicio según { $from }): perdió { $dry } de la masa seca{ $hasRange ->
    [yes] {" "}({ $range })
   *[no] {""}
  }, { $organic } de la materia orgánica
balance-ash-suspect = { CAP($place) }: cenizas { $last } (#{ $entry }), menos que al inicio ({ $first }, según { $from }). ¿Tierra en la primera muestra, u otra pila? La pérdida no se sabe.
balance-no-ash = Sin balance de cenizas: hacen falta las cenizas o la materia orgánica del laboratorio ("C laboratorio cenizas 35 %") y lo que entró.
ash-from-result = un resultado anterior
ash-from-intake = lo que entró, valores típicos
why-balance = Masa que entró menos masa que salió; { $low } a { $high } se va en gas y vapor. Lo que queda se dice, sin forzar la cuenta.
why-ash = La ceniza queda mientras lo demás se va: pérdida = 1 − ceniza al inicio ÷ ceniza al final.
analyte-ash = cenizas

## La página
page-title = Bitácora de composta
page-volunteer = voluntario
page-loading = Un momento …
page-emergency = Emergencia
page-emergency-close = Cerrar
page-emergency-call = Llamar al { $number }
page-emergency-rules = Primero las reglas del sitio y los servicios locales.
page-emergency-none = La ficha de seguridad llega con la primera conexión. Mientras: para las máquinas, aléjate, llama a tu número de emergencias.
page-log = Lo escrito y lo contestado
page-empty = Escribe lo que hiciste, por ejemplo: carro 61,5
page-field = ¿Qué hiciste?
page-send = Enviar
page-today = Hoy
page-week = Semana
page-words = carro|astillas|cubeta|volteada
page-letters = abc
page-digits = 123
page-keys-letters = Teclado con letras
page-keys-digits = Teclado con números
page-waiting = Espera su envío
page-sending = Enviando
page-no-answer = Queda en el chat, nada que anotar.
page-chosen = Elegido: { $label }
page-offline = Sin señal. Lo que escribes queda en este teléfono y se envía después.
page-online = Conectado
page-busy = Mucho que hacer: el envío sigue solo en un momento.
page-too-old = No enviado: escrito hace más de dos semanas. Escríbelo otra vez con su fecha.
page-refused = No enviado: muy largo o ilegible.
page-kept-answer = Sin señal: la respuesta de { $when }.
page-no-kept-answer = Sin señal, y sin respuesta de antes.
page-not-kept = Este teléfono no guarda nada para después (¿ventana privada?): quédate donde haya señal.
page-name-ask = Tu nombre, para que el equipo sepa quién escribe
page-name-save = Soy yo
page-name-skip = Omitir
page-name-change = Nombre: { $name }
page-name-none = Nombre: ninguno
page-language = Idioma
page-ended-head = Este enlace terminó
page-ended = El equipo colgó uno nuevo. Escanea el código nuevo junto a la báscula, o pregunta a quien coordina. Lo que aún espera en este teléfono sale con el enlace nuevo.
page-unknown-head = Este enlace no se conoce
page-unknown = Escanea otra vez el código junto a la báscula, o pide el enlace a quien coordina.
page-no-link = Para escribir aquí hace falta el enlace del sitio: escanea el código junto a la báscula.
page-file = Archivo: { $name }
page-script = Esta página necesita JavaScript.
dirt-gloves = guantes
dirt-cutlery = cubiertos
dirt-glass = vidrio
dirt-metal = metales
dirt-plastic = plástico
dirt-bags = bolsas
dirt-foam = espuma
dirt-cups = vasos
dirt-cardboard = cartón
dirt-napkins = servilletas
dirt-stones = piedras
feedback-nothing = Nada que decir de los últimos 30 días{ $has ->
    [yes] {" "}sobre { $source }
   *[no] {""}
  }.
feedback-clean = { $source }: { $loads ->
    [one] 1 carrito
   *[other] { $loads } carritos
  } en 30 días, todos limpios. Denles las gracias.
feedback-dirty = { $source }: { $dirty } de { $loads } carritos sucios en 30 días{ $hasFound ->
    [yes] , sobre todo { $found }
   *[no] {""}
  }.

## Imágenes

chart-number = { $value }
chart-day = { $day }
chart-weekday = { $day }
chart-month = { $day }
chart-mass = { $kg }
chart-tonnes = { $tonnes }
chart-source = { $source }
chart-source-none = origen no dicho
chart-source-others = otros { $count }
chart-axis-date = fecha
chart-axis-month = mes
chart-axis-temperature = temperatura, °{ $unit }
chart-axis-mass-day = { $unit } recibidos por día
chart-axis-mass-week = { $unit } recibidos por semana
chart-axis-year = { $unit } recibidas desde el inicio del año
chart-axis-moisture = agua, % de la masa
chart-axis-cn = C:N
chart-heat-title = { CAP($place) }: { $high } en lo más caliente
chart-heat-title-rise = { CAP($place) }: { $rise } sobre el ambiente
chart-heat-title-near = { CAP($place) }: { $rise } sobre el ambiente, ya está cerca
chart-heat-title-near-on = { CAP($place) }: { $rise } sobre el ambiente, cerca hacia el { $day }
chart-heat-last = última lectura { $date }: { $low } a { $high }
chart-heat-last-one = última lectura { $date }: { $high }
chart-heat-proof-met = { $counted } de { $needed } { $unit } con calor suficiente: tiempo y calor cumplidos
chart-heat-proof-not-yet = { $counted } de { $needed } { $unit } con calor suficiente
chart-heat-proof-cannot-show = { $counted } de { $needed } { $unit }: estas lecturas no lo pueden mostrar
chart-heat-between = cerca del ambiente del { $from } al { $to } (4 de cada 5 veces)
chart-heat-between-open = cerca del ambiente el { $from } lo más pronto, sin fecha límite conocida
chart-heat-hottest = punto más caliente
chart-heat-lowest = punto más frío
chart-heat-read = leído en la pila
chart-heat-ambient = aire (ambiente)
chart-heat-level = higienización { $level }
chart-heat-counted = contados: { $counted } de { $needed } { $unit }
chart-heat-turned = volteada
chart-heat-covered = cubierta
chart-heat-uncovered = destapada
chart-heat-forecast = probable
chart-heat-band = 4 de cada 5 veces
chart-heat-near = { $day }
chart-heat-alt = { $count } lecturas desde { $from }, la más caliente { $high } ({ $on })
chart-week-title = Del { $from } al { $to }: entraron { $kg }{ $hasUsual ->
    [yes] , de costumbre { $usual }
   *[no] {""}
  }
chart-week-title-so-far = Entraron { $kg } desde el { $from }{ $hasUsual ->
    [yes] , de costumbre { $usual } por semana
   *[no] {""}
  }
chart-week-estimated = de ello unos { $kg } estimados
chart-week-usual-day = de costumbre ese día
chart-week-weeks = { $unit } por semana, según el primer día
chart-week-alt-day = { $day } { $kg }
chart-week-alt-before = semana anterior { $kg }
chart-estimated = estimado por volumen
chart-chips = astillas
chart-year-title = Entraron { $tonnes } desde el { $from }
chart-year-title-forecast = Entraron { $tonnes } desde el { $from }, probablemente de { $low } a { $high } al { $to }
chart-year-pace = { $pace }
chart-year-needed = unos { $kg } por semana de aquí en adelante para alcanzarla
chart-year-total = entró, al { $day }
chart-year-weighed = solo lo pesado
chart-year-target = meta { $tonnes }
chart-year-forecast = probable, 4 de cada 5 veces
chart-mix-title = Mezcla de hoy: { $pct } de agua
chart-mix-title-add = Mezcla de hoy: { $pct } de agua, agregue { $one }{ $what } de { $material }
chart-mix-title-enough = Mezcla de hoy: { $pct } de agua, bastan las astillas
chart-mix-title-squeeze = Mezcla de hoy: cerca de { $pct } de agua, apriete para saber
chart-mix-title-squeeze-wet = Mezcla de hoy: cerca de { $pct } de agua. Apriete; si escurre, { $one }{ $what } de { $material }
chart-mix-title-infeasible = Mezcla de hoy: { $pct } de agua, no se arregla con lo que hay
chart-mix-sub = agua { $range } %, C:N { $cn } ({ $cnRange })
chart-mix-window = bien: agua { $range } %, C:N { $hasTop ->
    [yes] { $cn } a { $top }
   *[no] { $cn } o más
  }
chart-mix-now = ahora
chart-mix-after = con { $one }{ $what } de { $material }{ $more ->
    [0] {""}
   *[other] {" "}y lo demás
  }
chart-mix-never = más de { $pct }: nunca
chart-mix-alt-after = con ello { $pct } de agua, C:N { $cn }
chart-saved = Imagen: { $path }

## La mezcla y el tambor: lo que hay detrás de una respuesta, y sus ajustes
mix-recipe-add = Según su receta: agregue { $one }{ $what } de { $material } (unos { $kg }). Queda cerca de { $after } de agua.
mix-recipe-enough = Su receta está cumplida: cerca de { $pct } de agua ({ $range }, { $basis }).
recipe-none = No hay receta propia («fija receta 1 astillas : 1 comida por volumen»).
mix-enough-tested = Mezcla de hoy: cerca de { $pct } de agua ({ $range }, { $basis }). Nada que agregar.
mix-over-never = Con la receta sola queda muy mojada (cerca de { $after }; nunca más de 65 %). Astillas secas hasta que al apretar salgan una o dos gotas.
mix-packed = Apretada: { $density }, solo { $air } de aire más o menos (hace falta 40 %). Astillas gruesas, o voltéela.
mix-solves = Haría falta una cosa más: { $solve }.
mix-more-solves = Harían falta más { $solve }.
mix-room-solves = Descargue antes un poco: no cabe lo que hace falta.
asks-structure = le falta lo grueso
asks-moisture-high = está mojada
asks-moisture-low = está seca
asks-cn-low = le falta carbono
asks-cn-high = le falta nitrógeno
asks-cap = demasiado fino
asks-recipe = su receta
asks-stock = falta existencia
asks-room = no hay espacio
planned-short = Es lo mejor que se puede aquí ({ $limit }{ $hasOther ->
    [yes] , { $other }
   *[no] {""}
  }): no alcanza.
room-too-young = Lo más viejo aún no tiene sus { $days } días: lo que sale no está listo.
room-stands = No: el tambor está parado (#{ $entry }). Sin cargas nuevas hasta que gire.
drum-stands-no-loads = El tambor está parado (#{ $entry }): no más cargas hasta que gire.
drum-stands = { CAP($place) } parado { $hours ->
    [0] desde ahora
   *[other] desde hace { $hours } h
  } (#{ $entry }): sin cargas nuevas.
drum-inside = Adentro: { $material } unos { $kg }
drum-inside-also = { $material } { $kg }
why-drum-full = Al tambor le caben { $litres }; { $pct } cuenta como lleno ({ $from }).
why-drum-shrink = Se reduce cerca de { $shrink } % al día ({ $low }–{ $high }).
formula-drum-fill-by-level = Llenado: el nivel visto, reducido desde entonces, más las cargas de después, menos lo que salió.
formula-drum-fill-by-loads = Llenado: los litros de cada carga, reducidos por sus días; lo fino ocupa parte de los huecos de las astillas.
formula-correction-by-recipe = Qué agregar: los menos recipientes enteros que cumplen su receta.
formula-correction-fewest-containers = Qué agregar: los menos recipientes enteros que cumplen todo eso, con la existencia y el espacio.
drum-taken-first-in-first-out = Supuesto: lo que entró primero sale primero.
drum-taken-level-by-eye = Supuesto: un nivel a ojo vale a un décimo del tambor.
why-room = Supuesto: { $what }, unos { $kg } de comida ({ $from }), con sus astillas unos { $litres }.
why-accepts = { $has ->
    [yes] Leído en la lista del sitio (#{ $entry }), nada más.
   *[no] Leído en la lista del sitio (su archivo), nada más.
  }
why-accepts-how = Sí solo con su nombre; un no vale también para lo parecido. Cambiar: «fija acepta pan, no carne».
why-planned = Supuesto: { $what }, unos { $kg } de comida en total ({ $from }).
figure-common = práctica común
why-mix-water = Eso da cerca de { $pct } de agua ({ $range }){ $hasCn ->
    [yes] , C:N cerca de { $cn } ({ $cnRange })
   *[no] {""}
  }.
why-mix-aim = Meta: { $range } % de agua, nunca más de { $never }; C:N { $hasTop ->
    [yes] { $cn } a { $top }
   *[no] { $cn } o más
  }; al menos { $floor } L de lo grueso por 1 L de comida.
why-mix-recipe = Meta: su receta, { $chips } de astillas por { $food } de comida { $by }. Va antes que la ventana usual.
why-recipe = Su receta va antes que la ventana usual. «quitar la receta» la anula.
by-volume = en volumen
by-mass = en masa
why-mix-limiting = Lo que más pide: { $limit }.
why-drum-rules = { $hasRule ->
    [yes] Su regla: cada { $low } a { $high }.
   *[no] Aquí no hay intervalo fijado (fijar intervalo del tambor 40-60).
  } Ventilador apagado { $hours } h como mucho ({ $from }).
why-call-set = A quién llamar y cuándo: fijado aquí.
why-call-unset = No se ha fijado a quién: «fijar llamada del tambor Sam 555 0100», «fijar llamada del tambor tras 4 horas».
stopped-call-now = { CAP($place) } parado desde hace { $hours } h (#{ $entry }). Llame { $has ->
    [yes] a { $whom }
   *[no] a un coordinador
  } ya. Sin cargas nuevas; anote el calor.
setting-mix-water = buscar { $low } a { $high } % de agua en la mezcla
setting-mix-cn = C:N de la mezcla { $low } a { $high }
setting-drum-interval = tambor cada { $low } a { $high } min
setting-drum-call = si el tambor se para, llamar a { $whom }
setting-drum-call-hours = llamar cuando el tambor lleve { $number } h parado
setting-drum-days = tambor: { $number } días adentro
setting-drum-full = tambor lleno al { $number } %
setting-drum-least-hours = tambor: al menos { $number } h adentro
setting-fan-off-hours = ventilador apagado { $number } h como mucho
setting-carbon = { $material }: carbono { $number } % de lo { $hasFresh ->
    [yes] fresco
   *[no] seco
  }
setting-nitrogen = { $material }: nitrógeno { $number } % de lo { $hasFresh ->
    [yes] fresco
   *[no] seco
  }
setting-ash = { $material }: cenizas { $number } % de lo { $hasFresh ->
    [yes] fresco
   *[no] seco
  }
setting-density = { $material } { $number } kg/m³
setting-cn = { $material } C:N { $number }
analyte-bulk-density = densidad
analyte-lead = plomo
analyte-cadmium = cadmio
analyte-copper = cobre
analyte-zinc = zinc
analyte-nickel = níquel
analyte-arsenic = arsénico
analyte-mercury = mercurio
analyte-chromium = cromo
analyte-cobalt = cobalto
analyte-molybdenum = molibdeno
analyte-selenium = selenio
analyte-faecal-coliforms = coliformes fecales
analyte-faecal-coliform = coliformes fecales
analyte-foreign-matter = impurezas
analyte-plastic = plástico
analyte-glass = vidrio
analyte-metal = metal
analyte-nitrogen = nitrógeno
analyte-phosphorus = fósforo
analyte-potassium = potasio
analyte-carbon = carbono
analyte-organic-matter = materia orgánica
analyte-ammonium = amonio
analyte-nitrate = nitrato
analyte-stability = estabilidad
analyte-maturity = madurez
analyte-self-heating = autocalentamiento
cite-from-memory = de memoria
cite-common-practice-no-source = práctica común, sin fuente
cite-common-practice-on-one-kind-of-machine-no-source = práctica común en un tipo de máquina, sin fuente
cite-the-site-and-local-codes-come-first = el sitio y las normas locales van primero
cite-seen-as-a-copy = visto en copia
cite-the-site-s-settings = los ajustes del sitio
cite-the-site = el sitio
cite-the-rest = lo demás
cite-seen = visto
cite-nitrogen = nitrógeno
cite-carbon = carbono
cite-range = margen
cite-by-definition = por definición
cite-of-volatile-solids-in-days = de los sólidos volátiles en 12 días
cite-carbon-and-ash = carbono y ceniza
cite-moisture-and-nitrogen = humedad y nitrógeno
mix-loose = Según su cubo: { $density }, cerca de { $air } de aire. Bastante suelta.
mix-left-out-load = No está en esta cuenta: #{ $entry }, peso desconocido.
why-factor-litre = { CAP($material) }: { $factor } kg/L según valores publicados ({ $low }–{ $high }); varían mucho.
why-factor-learned = Un ({ $container }): { $each }, aprendido de los pesados aquí (19 de 20 entre { $low }–{ $high }).
why-factor-set = Un ({ $container }): { $each }, fijado aquí.
setting-band = { $band } desde { $celsius }
setting-depth = lecturas juzgadas de { $from } a { $to } de profundidad
setting-lab-standard = límites de laboratorio { $name }
setting-day-count = { $way ->
    [hours-72] días contados por horas enteras
   *[other] un día cuenta por su lectura
  }
setting-aeration = { $way ->
    [forced] tubos con ventilador
    [breathing] tubos que solo respiran
   *[other] sin tubos
  }
setting-vectors = { $on ->
    [on] atracción de vectores exigida
   *[other] atracción de vectores aparte
  }
settings-heat = Calor
setting-one-of = Puede ser: { $values }. No cambió nada.
heat-band-do-not-open = no abrir
heat-band-act-at-once = actuar ya
heat-band-turn-soon = voltear pronto
heat-band-act-today = demasiado caliente, actuar hoy
heat-band-fire-watch = vigilar el fuego
setting-drum-way = el calor del tambor se prueba { $way }
drum-way-in-vessel = en el tambor mismo
drum-way-closed-pile = en la pila cerrada
drum-call-line = Si se para: llamar a { $whom }{ $hasHours ->
    [yes] {" "}tras { $hours } h
   *[no] {""}
  }.
drum-call-nobody = Nadie está nombrado: «fija llamada tambor Sam 555 0100». Hasta entonces, la coordinación.
accepts-in = Se acepta: { $list }.
accepts-out = Queda fuera: { $list }.
accepts-no-list = Todavía no hay lista: «fija acepta pan, no carne».
