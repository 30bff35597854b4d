import type { Words } from '../../lexicon.ts';

/** Small words, numbers, units and the marks of talk, in Spanish. */
export const talk: Words = {
  negwas: 'no era|no eran|no fue|no fueron|no es',
  definite: 'el|la|los|las',
  onename: 'uno',
  pilearticle: 'la',
  fill: 'el|la|los|las|lo|un|una|unos|unas|es|esta|estan|estaba|son|fue|era|ya|hoy|aqui|ahi|hay|oye|hola|buenos dias|buenas tardes|buenas|gracias|por favor|porfa|todos|todo|toda|otra vez|ahora|tambien|hice|hicimos|ok|okay|bueno|pues|listo por hoy|fin de turno|fin del dia|mi|su|nuestra|nuestro|le|les|se|me|nos|he|hemos|ha|han|este|esta|estos|estas|eso|ese|esa|otro|otra|solo|muy|mas o menos|apenas|jaja|va|fueron|quedo|eran|al fin|por fin|yo|ella|ellos|primero|despues|ultimo|ultima|tenemos|tengo|tiene|cierre|a ver|entonces|nada mas|nomas|total de|ah|eh|bien|acabo de|acabamos de|chicos|compas|amigos|raza|banda|buen dia|buenas noches|saludos|que tal|perdon|adios|nos vemos|hasta manana|reporte|reporte del dia|resumen rapido|mensaje|turno|turno terminado|dia|x|sitio|son las|del dia|tienen|con permiso|ay|uf|ufa|dale|orale|excelente|genial|perfecto gracias|super|jefe|jefa|mire|miren|cosa|lado|lados|nuevo|nueva|grande|chico|chica|pequeno|pequena|mismo|misma|dentro|ustedes|nosotros|y ya|fin|nivel del|tarde|medio dia|mediodia|siempre|ultimas|varios|varias|poco|un poco de|te|tu|ahorita|recien|para registrar|registro|aca|por aca|todavia|aun|llevo|despues de comer|antes de comer|hola equipo|buenos dias equipo|antes de irme|al mediodia|se ve|parece|con el tractor|con el cargador|por la manana|luego',
  'prep:from': 'de|del|desde|proveniente de|de la|de parte de|procedente de|provenientes de|de el',
  'prep:to': 'a|al|para|hacia|hasta',
  'prep:into': 'a|en|dentro de',
  'prep:on':
    'sobre|encima de|en|arriba de|por encima de|cerca de|junto a|al lado de|alrededor de|por|detras de|contra|bajo|debajo de|cerca del|junto al|cerquita de|alrededor del|al lado del|afuera de|a un lado de|al pie de|a un costado de|enfrente de|atras de|abajo de|pegado a|pegada a|a orillas de',
  'prep:off': 'fuera',
  'prep:out': 'fuera de|afuera de',
  'prep:in': 'en|dentro de|dentro del',
  'prep:with': 'con|mas|c',
  'prep:of': 'de|del',
  'prep:at':
    'a|@|esta a|marca|marco|llego a|en|lectura|va en|anda en|subio a|bajo a|indica|estan a|lee|leyo|estaba a|dio|registra|registro|anda a|va a los|alcanzo|alcanzo los|mide|midio|tiene',
  'prep:for': 'para|por',
  and: 'y|e|asi como|ademas de',
  numand: 'y',
  next: 'luego|pero|despues|y luego|y despues',
  'article:1': 'un|una|uno',
  tempword:
    'tempertura|temperarura|temperatra|tenperatura|temp|temperatura|temperaturas|temps|lectura|lecturas|tempe|temperatura de|temperatura de la|temp de|toma de temperatura|calor de|termometro a|lectura de|tomamos temperatura|tome temperatura|tome la temperatura|tomamos la temperatura|temp de la|t',
  both: 'ambas|las dos|ambas pilas|las dos pilas|las 2 pilas|las 2|ambos',
  all: 'todas las|todos los|cada una|todas|las',
  total:
    'total|en total|juntos|juntas|por todo|por todos|entre los dos|entre todos|combinado|entre las dos|en conjunto|suma|peso total|todos juntos|todas juntas|entre las tres|entre los tres|por las dos|por los dos|sumados|sumadas|por todas|combinados|combinadas|en suma|de un jalon|todo junto|entre todas',
  each: 'cada uno|cada una|c u|por carrito|por cubeta|c / u|cu|por balde|por pieza|cada cubeta|cada carrito|por bolsa|la pieza|por cada una|por cada uno|cada balde|cada cual',
  net: 'neto|neta|netos|netas|sin el carrito|sin la cubeta|sin carrito|sin cubeta|sin tara|peso neto|sin el balde|tara descontada|descontando la cubeta|descontando el carrito|sin contar la cubeta|sin contar el carrito|ya sin cubeta|ya sin la cubeta|menos la cubeta|menos el carrito|libre de tara|sin balde|puro contenido|solo contenido|sin el bote',
  gross:
    'bruto|bruta|brutos|brutas|con el carrito|con carrito|con la cubeta|con cubeta|peso bruto|incluye el carrito|con tara|carrito incluido|cubeta incluida|con el balde|incluyendo la cubeta|incluyendo el carrito|con todo y cubeta|con todo y carrito|incluida la cubeta|incluido el carrito|tara incluida|con todo y bote|con todo y balde',
  tare: 'tara|peso vacio|menos|menos tara|taras|tara de|pesa vacio|pesa vacia|menos la tara|de tara',
  emptyadj: 'vacio|vacia|vacios|vacias|limpio y vacio|limpia y vacia',
  approx:
    'como|aprox|aproximadamente|alrededor de|cerca de|casi|unos|unas|mas o menos|~|por ahi de|a eso de|como unas|como unos|aproximado|digamos|quizas|quiza|cerca de los|mas o menos a|rondando los|aproximados|aproximadas|estimo|estimado|estimados|calculo|calculo que|poco mas de|poco menos de|tal vez|algo asi como|a ojo|cosa de|por los|masomenos|entre unos|como a|como a los|como en',
  lowof: 'bajos',
  midof: 'medios',
  highof: 'altos',
  or: 'o|o tal vez|o quiza|o sera|o quizas|o era|o a lo mejor|o bien|u',
  unsure:
    'no estoy seguro|no estoy segura|no se lee|creo|no se ve bien|no recuerdo|la bascula brincaba|no me acuerdo|no distingo|no se cual|no lo alcanzo a leer|no alcanzo a leer|la bascula andaba mal|la bascula brinca|bascula brincando|no alcance a ver|no se distingue|la bascula estaba brincando|ya no me acuerdo|no se bien|no se entiende|esta borroso|borroso|quien sabe|no se bien cual|no le entiendo|no pude leer|no se si|no se alcanza a ver|la bascula no se quedaba quieta|no recuerdo bien|no estoy seguro cual|la bascula bailaba|se movia la bascula|no me fije bien',
  correct:
    'no espera|espera no|perdon|digo|mejor dicho|quiero decir|correccion|no perdon|perdon no|me equivoque|ups|no digo|era|no era|rectifico|ay no|no no|espera|mas bien|quise decir|perdona|perdon era|no son|aguanta|ay perdon|espera es|fe de erratas|perdon son|me equivoque son|me equivoque es|no perdon es|disculpa|disculpen|uy no|uy|no mejor|perdon digo|ah no|no esperen|esperen|corrijo|sorry|no son son|no es|no sorry|oops|esperate no|esperate no|esperate|no esperate|chin no|chin',
  neg: 'no|nunca|sin|ningun|ninguna|ninguno|nada|nadie|tampoco|ni|todavia no|aun no|jamas|ya no|nel|apenas si',
  intent:
    'hay que|tenemos que|necesita|necesitamos|vamos a|voy a|va a|debemos|deberia|deberiamos|debo|debe|tengo que|quiero|queremos|planeo|pienso|falta|faltan|puedes|pueden|podrias|alguien puede|no olviden|no olvides|recuerden|recuerda|acuerdense|hace falta|habria que|pongan|volteen|tapen|voltear|tapar|regar|vaciar|habra que|nos toca|toca voltear|quisiera|ojala|por favor volteen|puede que|proximo|proxima|antes de|traten de|trata de|quizas hay que|deben|deberian|podriamos|podria|podemos|necesito|necesitan|favor de|manana hay que|pronto|mas tarde|al rato|le toca|les toca|ocupa|ocupamos|ocupo|planeamos|quiere|se tiene que|se necesita|se debe|tendremos que|tendria que|tendriamos que|te toca|urge|conviene|seria bueno|vayan a|espero|esperamos|puedas|tratar de|recordatorio|planeado|planeada|van a|ire|iremos|hare|haremos|volteare|voltearemos|taparemos|tapare|regare|regaremos|pesare|vaciare|vaciaremos|mandare|traere|traeremos|pueda|puedan|cubran|rieguen|vacien|cernir|mover|cubrir|pesar|mezclar|limpiar|terminen|vayamos|dejen|lleven|llevare|intentar|me gustaria|estaria bien|pendiente|pendientes|planea|toca|iba a|iban a|ibamos a',
  cond: 'si|cuando|en caso de|en cuanto|a menos que|siempre que|por si|cada vez que|si es que|mientras|una vez que|apenas que|hasta que|en caso que',
  ask: 'quien|que|donde|por que|como|cuanto|cuanta|cuantos|cuantas|cual|cuales|alguien|ya voltearon|cuando fue|ya|has|han|sera que|acaso|a quien|quienes|hiciste|hicieron|puedo|se puede|podemos|volteaste|tapaste|tapaste|voltearon|pesaste|pesaron|regaste|regaron|viste|vieron|sabes|saben|sabe|oigan|ustedes|llego ya|tienes|tienen|habra|adonde|oye|cuanto entro|que entro|cuanto recibimos|que recibimos|como nos fue|que hicimos|cuanto metimos',
  hearsay:
    'cuaderno dice|el ano pasado|dicen que|segun|lei que|vi en|el diario dice|en las noticias|me dijo|me dijeron|mi vecino|mi vecina|antes|el registro dice|el cuaderno|la bitacora|articulo|en mi casa|mi pila|mi compost|el verano pasado|el invierno pasado|facebook|en la tele|mi mama|mi papa|mi abuela|mi hermano|mi hermana|normalmente|en teoria|por lo general|la regla|el manual|el libro|sone|sone que|el record|internet|youtube|mi jardin|mi hijo|mi hija|mi esposo|mi esposa|mi primo|mi prima|mi tio|mi tia|suegra|del ano|capacidad|en promedio|promedio|por todo el ano|la hoja dice|la etiqueta|mis|en casa|la bitacora dice|el diario|en otro sitio|escuche|oi que|aparentemente|supuestamente|se supone|idealmente|letrero|letrero dice|el letrero dice|el recibo dice|cartel|periodico dice',
  money:
    '$|€|pesos|dolares|precio|cuesta|cuestan|pague|pagamos|debo dinero|vendo|barato|caro|debo|euros|dolar|lana|costo|costaron|cobran|cobra|cuota|oferta|renta|pago|te debo|me debes|gastamos|gaste|cambio de|varos|presupuesto',
  deep: 'profundidad|de profundidad|de profundo|hondo|de hondo|profundo|de fondo|bajo la superficie|de prof|adentro|hacia abajo|de espesor|a profundidad|para adentro|pa dentro',
  'unit:kg': 'kg|kgs|kilo|kilos|kilogramo|kilogramos|k|quilos|quilo',
  'unit:g': 'g|gramo|gramos|gr|grs',
  'unit:lb': 'lb|lbs|libra|libras|lb.|lbrs',
  'unit:oz': 'oz|onza|onzas',
  'unit:t': 't|tonelada|toneladas|ton|tons',
  'unit:L': 'l|litro|litros|lt|lts|ltr|ltrs',
  'unit:mL': 'ml|mililitros',
  'unit:gal': 'gal|galon|galones|gals|gls',
  'unit:m3': 'm3|metros cubicos|metro cubico|m cubicos|mts cubicos|cubicos',
  'unit:yd3': 'yardas cubicas|yarda cubica|yd3|yardas|yarda|yds|yd',
  'unit:ft3': 'pies cubicos|pie cubico|ft3',
  'unit:cm': 'cm|centimetros|centimetro|cms',
  'unit:mm': 'mm|milimetros|milimetro',
  'unit:m': 'm|metro|metros|mts',
  'unit:in': 'pulgada|pulgadas|pulg|in|plg',
  'unit:ft': 'pie|pies|ft',
  'unit:C': 'c|centigrados|celsius|grados c|grados centigrados|grados celsius|grado c|grado centigrado|gc',
  'unit:F': 'f|fahrenheit|grados f|grados fahrenheit|farenheit|grado f|grados farenheit|gf',
  'unit:deg': 'grado|grados|deg|grad|grds',
  'unit:min': 'min|minuto|minutos|mins',
  'unit:h': 'h|hora|horas|hrs|hr',
  'unit:d': 'dia|dias|d',
  'unit:%': 'por ciento|porciento|pct',
  'numw:0': 'cero',
  'numw:1': 'uno solo',
  'numw:2': 'dos|par de',
  'numw:3': 'tres',
  'numw:4': 'cuatro',
  'numw:5': 'cinco',
  'numw:6': 'seis',
  'numw:7': 'siete',
  'numw:8': 'ocho',
  'numw:9': 'nueve',
  'numw:10': 'diez',
  'numw:11': 'once',
  'numw:12': 'doce|docena de|docena',
  'numw:13': 'trece',
  'numw:14': 'catorce',
  'numw:15': 'quince',
  'numw:16': 'dieciseis',
  'numw:17': 'diecisiete',
  'numw:18': 'dieciocho',
  'numw:19': 'diecinueve',
  'numw:20': 'veinte',
  'numw:21': 'veintiuno|veintiun|veintiuna',
  'numw:22': 'veintidos',
  'numw:23': 'veintitres',
  'numw:24': 'veinticuatro',
  'numw:25': 'veinticinco',
  'numw:26': 'veintiseis',
  'numw:27': 'veintisiete',
  'numw:28': 'veintiocho',
  'numw:29': 'veintinueve',
  'numw:30': 'treinta',
  'numw:31': 'treinta y uno|treinta y un|treinta y una',
  'numw:40': 'cuarenta',
  'numw:41': 'cuarenta y uno|cuarenta y un|cuarenta y una',
  'numw:50': 'cincuenta',
  'numw:51': 'cincuenta y uno|cincuenta y un|cincuenta y una',
  'numw:60': 'sesenta',
  'numw:61': 'sesenta y uno|sesenta y un|sesenta y una',
  'numw:70': 'setenta',
  'numw:71': 'setenta y uno|setenta y un|setenta y una',
  'numw:80': 'ochenta',
  'numw:81': 'ochenta y uno|ochenta y un|ochenta y una',
  'numw:90': 'noventa',
  'numw:91': 'noventa y uno|noventa y un|noventa y una',
  'numw:100': 'cien|ciento',
  'numw:200': 'doscientos|doscientas',
  'numw:300': 'trescientos|trescientas',
  'numw:400': 'cuatrocientos|cuatrocientas',
  'numw:500': 'quinientos|quinientas',
  'numw:600': 'seiscientos|seiscientas',
  'numw:1000': 'mil',
  decimal: 'punto|coma',
  'plus:0.5': 'y medio|y media',
  'plus:0.25': 'y cuarto|y un cuarto',
  'plus:0.75': 'y tres cuartos',
  'frac:0.5': 'media|medio|mitad|a la mitad|a medias|mitad de una|mitad de un|la mitad de la',
  'frac:0.25': 'cuarto de|un cuarto|a un cuarto',
  'frac:0.75':
    'tres cuartos de|tres cuartos|tres cuartas partes|a tres cuartos|tres cuartas partes de|3 cuartos|3 cuartos de',
  'frac:0.3333333333333333': 'un tercio de|un tercio|tercera parte|un tercio de una',
  'frac:0.6666666666666666': 'dos tercios|dos tercios de|dos terceras partes',
  ofit: 'de eso|de ellos|de ellas|de esos|de esas|de los cuales|de las cuales',
  minus: 'menos',
  'letter:A': 'ah',
  'letter:B': 'be',
  'letter:C': 'ce|se',
  'letter:D': 'de',
  'letter:E': 'eh',
  'strength:faint': 'leve|ligero|ligera|un poco|poquito|levemente|debil|suave',
  'strength:strong':
    'fuerte|fuertisimo|muy fuerte|horrible|feo|terrible|muchas|muchos|mucho|mucha|un monton de|bastantes|grave|bien fuerte|intenso|penetrante|insoportable|demasiado|pesado|tremendo|cabron|super fuerte|muchisimo|muchisimas|muchisimos|un chorro de|espantoso|bien feo|un chingo de|asqueroso|demasiadas|demasiados',
  more: 'otro|otra|uno mas|una mas|otro mas|otra mas|y otro|y otra|1 mas',
  same: 'lo mismo|igual|igual que antes|otra igual|otro igual|lo mismo otra vez|lo mismo de nuevo|idem|igualito|mismo peso|igual que la anterior|igual que el anterior|lo mismito',
};

/** What people ask for in Spanish. */
export const asking: Words = {
  'req:today':
    'que hay que hacer|que toca|que toca hoy|que hay para hoy|pendientes|lista|tareas|que falta|que falta hacer|que hago|que hacemos hoy|que tenemos que hacer|que toca hacer|tareas de hoy|que hay pendiente|pendientes de hoy|que hay que hacer hoy|cuales son las tareas|lista de tareas|que sigue|que me toca|que nos toca|que nos toca hoy|que falta por hacer|que queda por hacer|que se hace hoy|que tengo que hacer|que debo hacer|que pendientes hay|que hay de pendiente|que queda pendiente|lista de hoy|que me toca hoy|que tareas hay|que hay hoy|tareas pendientes|quehaceres|cual es el plan|que hacemos|cual es el plan de hoy|que toca ahora|que mas falta|que mas hay que hacer|que tareas faltan|que tareas quedan|que cosas hay que hacer|que falta hoy|cuales son los pendientes|que esta pendiente|muestra la lista|que toca para hoy|mis tareas|hay pendientes|que hay por hacer|que se tiene que hacer|que nos toca hacer|que me toca hacer|que hay pa hacer|que hay que hacer todavia|que toca hacer hoy|que nos falta|que nos falta hacer|que mas toca|que queda|que es lo que hay que hacer|que hay para hacer|que quehaceres hay|que es lo que toca|que trabajo hay|que hay que hacer ahorita',
  'req:week':
    'semana|esta semana|resumen|resumen de la semana|resumen semanal|como va la semana|semanal|cuanto esta semana|cuanto llevamos esta semana|total de la semana|como estuvo la semana|total semanal|cuanto hemos recibido esta semana|como vamos esta semana|semana pasada|cuanto recibimos esta semana|informe semanal|numeros de la semana|total de esta semana|que tal la semana|cuanto juntamos esta semana|cuanto recolectamos esta semana|cuanto entro esta semana|reporte semanal|dame la semana|como nos fue esta semana|resumen de esta semana|grafica de la semana|imagen de la semana',
  'req:year':
    'ano|este ano|cuanto llevamos este ano|cuanto hemos recibido este ano|total del ano|en lo que va del ano|cuanto va del ano|total anual|cuanto en el ano|como vamos este ano|cuanto hemos recolectado este ano|cuanto llevamos en el ano|cuanto llevamos|cuanto este ano|cuanto hemos recibido en el ano|resumen anual|resumen del ano|cuanto hemos compostado este ano|como va el ano|cuanto nos falta para la meta|como vamos con la meta|cuanto recibimos este ano|total de este ano|cuanto hemos juntado este ano|acumulado del ano|cuantas libras llevamos este ano|cuantas toneladas llevamos|cuantas toneladas llevamos este ano|lo que va del ano|cuantas libras este ano|cuantas toneladas este ano|cuanto llevamos de la meta|cuanto desperdicio llevamos este ano|cuanta comida llevamos este ano|cuanto se ha recibido este ano|vamos bien con la meta|cuanto llevamos en total este ano|cuanto hemos desviado este ano|grafica del ano|imagen del ano',
  'req:mine':
    'que registre|que anote|mis registros|mis entradas|que he registrado|que he anotado|mis apuntes|que apunte|lo que registre|muestrame lo que registre|que meti yo|que registre yo|mis anotaciones|que registre hoy|que anote hoy|que puse yo|lo que anote|ver mis registros|ver mis entradas|mi registro|que he apuntado|que apunte hoy|que he registrado hoy|muestra mis registros|muestrame mis registros|que he puesto',
  'req:mix':
    'mezcla|como va la mezcla|cuantas astillas|cuanta astilla|cuanto aserrin|cuantas carretillas de astillas|cuanta viruta|mix|como esta la mezcla|cuantas astillas necesitamos|cuanta astilla necesito|cuantas astillas necesito|cuanto aserrin necesito|cuantas cubetas de astillas|cuanto carbono|cuantas astillas hacen falta|cuantas astillas le echo|cuantas astillas agrego|cuanto aserrin le echo|cuanto aserrin necesitamos|mezcla de hoy|la mezcla esta bien|cuantas hojas|cuantas hojas le echo|cuantas astillas faltan|cuanto seco|cuanto material seco|cuantas astillas ocupo|cuantas astillas ocupamos|cuantas astillas para eso|cuantas astillas le pongo|cuanta astilla le pongo|cuanta astilla le echo|que tal la mezcla|cuanto aserrin le pongo|cuantas astillas se necesitan|como anda la mezcla|esta bien la mezcla|cuantas hojas necesito|cuantas hojas necesitamos',
  coming:
    'vienen|van a llegar|llegan|por llegar|esperados|para|vienen en camino|esperamos|manana|van a venir|en camino|con|si tengo|tengo|tenemos|si llegan',
  'req:help':
    'ayuda|comandos|como funciona|que puedes hacer|instrucciones|como se usa|como te uso|ayudame con esto|que puedo decir|ayuda con los comandos|menu|que sabes hacer|que comandos hay|como registro un carrito|como registro una cubeta|que puedo escribir|como se registra|ayuda porfa|como anoto|como anoto una cubeta|lista de comandos|que comandos tienes|manual porfa|como te hablo|necesito ayuda con el bot|como usar|que escribo|como se anota',
  'req:status':
    'estado|como va|como esta|como van|como estan|que tal va|estatus|debemos voltear|deberiamos voltear|como sigue|que temperatura tiene|cuando volteamos|que onda con|cuando fue la ultima volteada|hace cuanto volteamos|que pasa con|pilas|como anda|que tal|que tal esta|como andan|estado de|debo voltear|estado de la|cual es el estado de|como se encuentra|como va la|cuando se volteo|cuando voltearon|que temperatura|cuando voltear|cuando hay que voltear|cuando toca voltear|que novedades hay de|que hay de|estado general|deberia voltear|dime como va|dime como esta|y como va|y como esta|que temperatura hay en|en que va|a que temperatura esta|cuando le toca|cuando estara lista|a cuanto esta|cuanto marca',
  about:
    'hay que voltear|echarle agua|hay que echarle agua|hay que regar|hay que regarla|regar|regarla|le echamos agua ya|le falta agua|hay que taparla|taparla|hay que tapar|tapar|destapar|ponerle la lona|ya hay que voltear|toca voltear|esta lista|ya esta|necesita voltearse|lista|voltear|volteo|le toca volteo|ya toca voltear|ya se puede voltear|le toca vuelta|ya esta lista|esta caliente|caliente|hay que voltearla|necesita vuelta|ocupa vuelta|volteo ya|puedo voltear|podemos voltear|le falta mucho a|falta mucho para|estara lista|esta terminada|debo de voltear|se debe voltear|necesita volteo|hace falta voltear|muestra|muestrame|ya termino|ya esta terminada|estamos listos para voltear',
  'req:evidence': 'evidencia|evidencias|evidencia de|evidencias de|muestra la evidencia de|comprobante de',
  'req:history':
    'historial|historia|historial de|historia de|lecturas de|lecturas pasadas|ultimas lecturas|registro de|todas las lecturas|grafica de|grafica|muestra el historial|historial de la|lecturas anteriores|historia de la|grafico de|ultimas lecturas de|historico|curva de|tendencia de|grafico|muestrame el historial de|registros de|historico de|curva|que ha pasado con|ver historial de|ver el historial de|muestrame las lecturas de|todas las lecturas de|temperaturas pasadas de|evolucion de|dame el historial de|linea de tiempo de|imagen de|imagen|muestra la grafica de|muestrame la grafica de|muestra la imagen de',
  'req:undo':
    'deshacer|deshaz|deshaz eso|borra eso|borra|borra el ultimo|cancela eso|quita eso|anula|anula eso|borra lo ultimo|elimina eso|cancela|deshaz lo ultimo|borra la ultima|olvida eso|anula el ultimo|elimina el ultimo|borra el ultimo registro|anula la ultima|cancela lo ultimo|anula lo ultimo|quita lo ultimo|elimina lo ultimo|deshaz el ultimo|deshaz la ultima|cancela el ultimo|elimina la ultima|borra los|quita el ultimo|deshaga|borrar|elimina|quita la ultima|borra mi ultimo|borra mi ultima|borra la ultima entrada|borra mi ultimo registro|elimina el ultimo registro|anula mi ultimo|anula el ultimo registro|deshaz los|elimina los|borra las|deshaz las|anular|eliminar|quita eso ultimo|borralo|eliminalo|undo|deshazlo|cancelalo|borralo|olvida lo ultimo|ignora eso|ignora lo ultimo|ignora el ultimo|anulalo|cancela la ultima|quita mi ultimo|retira lo ultimo',
  last: 'ultimo|ultima|ultimos|ultimas',
  entries: 'entradas|registros|registro|entrada|cosas|lineas|numero de registro|anotacion|anotaciones',
  'req:done':
    'hecho|hecha|ya hice|terminado|listo|completado|numero|hechos|hice|ya quedo|marca|terminada|lista|ya esta|done|hechas|completada|listos|marcar|ya termine|terminamos|cumplido|marca como hecho|ya esta hecho|ya esta hecha|listas|ya hicimos',
  'req:claim':
    'yo tomo|yo hago|yo me encargo|yo me encargo de|me encargo|me encargo de|me toca|yo lo hago|lo hago yo|tomo|agarro|yo agarro|voy a tomar|yo voy a hacer|puedo hacer|me quedo con|dejame|aparto|apuntame|apuntame para|yo puedo|yo puedo hacer|yo me quedo con|apuntame en|apuntenme en|me apunto|me apunto para|yo aparto|me apunto en|me apunto a|yo voy con|hare|yo hare|yo tomare|yo llevo|tomare|reservame|quiero hacer|quiero|asigname|me encargo del|yo me encargo del|dame|me pido',
  'req:release':
    'no puedo hacer|suelto|dejo|que otro haga|ya no puedo hacer|no voy a poder|libero|que alguien mas haga|no podre hacer|devuelvo|no podre|que lo haga otro|ya no puedo|no puedo con|no voy a poder hacer|que alguien mas tome|quitame|cedo|no alcanzo a hacer|me quito de|renuncio a|no puedo|no me da tiempo de hacer|ya no voy a poder hacer|no puedo hacer la|que otro tome|no podre con|ya no puedo con',
  'req:postpone':
    'pospon|posponer|pospongo|aplaza|para manana|aplazar|deja para manana|mueve a manana|mas tarde|deja para despues|posponemos|pospon para|pospon hasta|aplazamos|atrasa|cambia para manana|deja para|pospongan|dejar para manana|dejar para|aplaza hasta|pasa para manana|pasala para manana|pasalo para manana|mejor manana|lo dejamos para manana|dejamos para manana|dejamos para|postergar|posterga|retrasa|puede esperar|recorre|pasa a manana|hoy no|para despues|aplaza para|mueve para',
  'req:why':
    'por que|por que eso|explica|explicame|por que razon|y eso por que|por que preguntas|y por que|por que asi|a que se debe|por que dices eso|explicamelo|explica eso|cual es la razon|como que|cual es el motivo',
  'req:show':
    'muestra|muestrame|ver|ver entrada|ver registro|muestra el registro|muestra entrada|muestra el|muestra la|ensename|muestrame el|ver el|detalles de|muestrame el registro|ensena|ver el registro|ver numero|detalle de|muestra la entrada|abre|abre el|dame el registro|ver la entrada|muestrame la entrada|muestra el numero|que decia|que era|consulta|mostrar|ensename el',
  'req:export':
    'exporta|exportar|descargar|csv|excel|descarga los datos|hoja de calculo|exporta los datos|manda los datos|mandame los datos|exporta todo|descarga todo|envia los datos|mandame el excel|exportar datos|exportar los datos|exporta a excel|exporta en excel|dame los datos|manda el excel|bajar los datos|descargar datos|exportacion|enviame los datos|enviame los datos|pasame los datos|pasame el excel|quiero los datos|saca los datos|exporta csv|enviame el excel|respaldo porfa',
  'req:report':
    'reporte|informe|reporte mensual|reporte anual|manda el reporte|haz un reporte|genera el reporte|informe mensual|reporte porfa|reporte para el inspector|dame el reporte|informe anual|genera un reporte|envia el reporte|reporte del mes|manda el informe|pdf|necesito el reporte|mandame el reporte|haz el reporte|hacer reporte|hacer el reporte|reporte para|informe para|reporte para la ciudad|informe del mes|quiero el reporte|saca el reporte|haz un informe|genera informe|genera el informe|prepara el reporte|mandame el informe|reporte trimestral|pasame el reporte|dame un reporte|quiero un reporte|necesito un reporte',
  'req:share':
    'comparte nuevo|enlace nuevo|nuevo enlace|comparte enlace nuevo|comparte|compartir|enlace para compartir|pagina publica|link para compartir|comparte los numeros|dame un enlace|dame el enlace|comparte el resumen|comparte la pagina|comparte el enlace|dame un link|quiero compartir|compartir los numeros|compartir el resumen|comparte los resultados|manda el enlace|manda el link|pasame el link|pasame el enlace|compartir enlace|crear enlace|crea un enlace|genera un enlace|enlace publico|comparte con|dame el link',
  'req:accepts':
    'aceptamos|podemos poner|se puede poner|se acepta|puedo poner|puedo echar|se aceptan|aceptan|se puede echar|va en la composta|se puede meter|podemos meter|se puede compostar|son compostables|es compostable|reciben|puedo meter|se pueden poner|se pueden compostar|podemos aceptar|podemos echar|recibimos|se pueden echar|se pueden meter|van en la composta|se vale poner|se vale echar|compostable|compostables|acepta|esta permitido|estan permitidos|se puede agregar|puedo agregar|puedo compostar|podemos compostar|puede ir en la composta|pueden ir en la composta|se composta|se compostan|se puede tirar|puedo tirar|va en el compost|van en el compost|en la composta|puedo traer|podemos recibir|a la composta|es aceptado|son aceptados|se permite|se permiten|aceptas|le puedo echar|se le puede echar|les puedo echar|vale echar|esta bien poner|esta bien echar|puede ir|pueden ir',
  'req:language':
    'idioma|habla|en espanol|responde en|cambia el idioma|idioma a|cambia a|hablame en|en espanol por favor|contesta en|pon el idioma en|cambiar idioma a|idioma en|cambia el idioma a|responder en|ponlo en|hablen|hablar en|hablas|prefiero|escribe en|usa|pasa a|contestame en|respondeme en|cambiar a',
  'lang:en': 'ingles|english',
  'lang:fr': 'frances|french',
  'lang:es': 'espanol|spanish|castellano',
  'req:forget-me':
    'olvidame|borra mis datos|quita mi nombre|elimina mis datos|borra mi nombre|olvidenme|borrame|elimina mi nombre|quitame del registro|borren mis datos|eliminen mis datos|quiten mi nombre|borra todo sobre mi|quita mis datos|borra mi informacion|elimina mi informacion|eliminame|quiero que me olviden|quiero que me olvides|borren mi nombre',
  'req:role':
    'coordinador|coordinadora|es coordinadora|es coordinador|rol|mi rol|quien es el coordinador|cual es mi rol|quien es coordinador|quien es la coordinadora|hazme coordinador|soy la coordinadora|soy el coordinador|hazme coordinadora|quien coordina|roles|es la coordinadora|es el coordinador|haz coordinadora|haz coordinador|nombra coordinador|nombra coordinadora|soy coordinador|soy coordinadora|quien es coordinadora',
  'req:settings':
    'ajustes|configuracion|muestra los ajustes|ver ajustes|ver los ajustes|lista de ajustes|cuales son los ajustes|ver configuracion|muestra la configuracion|muestrame los ajustes|parametros|ver la configuracion|ajustes del sitio|ajustes actuales|configuracion actual|muestrame la configuracion|que ajustes hay|cual es la configuracion',
  'req:handover':
    'que paso|que ha pasado|que me perdi|ponme al dia|relevo|que hubo|que novedades hay|novedades|que hay de nuevo|cambio de turno|que se hizo|ponme al corriente|que sucedio|que ocurrio|que hicieron|que ha sucedido|pasame las novedades|dame las novedades|que me he perdido|entrega de turno|resumen desde|que novedades|que pasaron|actualizame|que se ha hecho|que estuvo pasando|que hubo de nuevo|pongame al dia|que paso aqui|cuales son las novedades',
  since: 'desde|a partir de|despues de|de|durante|en',
  'req:new-here':
    'soy nuevo|soy nueva|nuevo aqui|nueva aqui|primer dia|es mi primer dia|mi primer dia|soy nueva aqui|soy nuevo aqui|acabo de llegar|por donde empiezo|como empiezo|es mi primera vez|soy nueva por aca|primera vez aqui|mi primera vez|voluntario nuevo|voluntaria nueva|acabo de empezar|soy voluntario nuevo|soy voluntaria nueva|empiezo hoy|soy nuevo por aca|estoy empezando|hoy empiezo|hoy es mi primer dia|recien llegado|recien llegada|soy nuevo en esto|soy nueva en esto|es mi primer turno',
  'req:room':
    'hay espacio para|hay sitio para|hay sitio|queda sitio para|queda sitio|cabe|caben|hay lugar para|tenemos espacio para|queda espacio para|espacio para|lugar para|hay campo para|tenemos lugar para|hay espacio|hay lugar|queda lugar para|cabran|podemos recibir|hay cupo para|queda espacio|hay cupo|tenemos cupo para|cabra|todavia hay espacio para|aun hay espacio para|todavia cabe|todavia caben|tenemos espacio|cuanto espacio queda|cuanto espacio hay|hay campo|queda lugar|aun caben|nos caben|nos cabe|todavia hay lugar para|podemos con|habra espacio para|habra lugar para|le caben|le cabe|alcanza el espacio para|queda cupo para|queda cupo',
  'req:trace':
    'podemos regalar|podemos dar|puedo regalar|de donde viene|que tiene|rastrear|se puede regalar|lista para regalar|que hay en|que lleva|se puede dar|puedo dar|podemos repartir|podemos entregar|rastreo de|de donde salio|trazabilidad|se puede repartir|se puede usar|que entro en|podemos usar|que contiene|trazabilidad de|puedo repartir|puedo entregar|de donde vino|se puede entregar|podemos vender|origen de|se puede vender|puedo usar|que le pusimos a|que se le puso a|segura para regalar|segura para repartir|podemos esparcir|que le echamos a|podemos donar|puedo donar|se puede donar|ya se puede regalar|ya podemos regalar|ya se puede repartir|ya podemos repartir|ya podemos dar|regalar|que hay adentro de|que ha entrado en|rastrea|es segura para regalar',
  'req:feedback':
    'que le digo a|que le digo al|comentario para|que le decimos a|que le decimos al|mensaje para|retroalimentacion para|que les digo a|que les decimos a|que puedo decirle a|que le puedo decir a|que le puedo decir al|comentarios para|que les digo|que le digo|que le decimos|que le cuento a|que le cuento al|que decirle a|que decirle al|que le respondo a|que le respondo al|que le contesto a|que decirles a|que debo decirle a|que debo decirle al|feedback para|retro para|que les decimos|que les puedo decir a|que le podemos decir a|que le podemos decir al|que le debo decir a|que le debo decir al|que informo a|que informo al',
  'req:closed':
    'cerrado|estamos cerrados|cerramos|cerrados|sitio cerrado|el sitio esta cerrado|estara cerrado|estaremos cerrados|cierre del|vacaciones del|cerrado del|vamos a cerrar|cerrado por|el sitio estara cerrado|el sitio cierra|no abrimos|vacaciones|cerraremos|permanecera cerrado|no habra servicio|cerrados del|esta cerrado',
  until: 'hasta|al|hasta el|a|para',
  'req:duty':
    'nueva tarea|agrega una tarea|agregar tarea|recuerdanos|nueva obligacion|recuerdame|agrega tarea|nuevo pendiente|anade una tarea|crear tarea|recuerdanos que|nuevo recordatorio|agrega un recordatorio|tarea nueva|recordatorio de|crea una tarea|agregar una tarea|pon un recordatorio|nueva tarea semanal|tarea semanal|nueva tarea diaria|agrega una tarea semanal',
  'set!:set':
    'pon|fija|cambia|ajusta|establece|configura|define|poner|set|cambiar|ajustar|actualiza|modifica|fijar|establecer|configurar|ponle|pongan|cambien|pon la|pon el',
  'set:units': 'unidades|unidad',
  'set:target': 'meta|objetivo|meta anual|meta del ano|objetivo anual',
  'set:time-zone': 'zona horaria|huso horario',
  'set:day-order':
    'orden de fechas|formato de fecha|orden de fecha|fechas|formato de fechas|orden de la fecha|orden de las fechas',
  'set:summary': 'resumen|resumen semanal|resumen de la semana|informe semanal',
  'set:morning':
    'lista de la manana|mensaje de la manana|manana|mensaje matutino|lista matutina|aviso de la manana',
  'set:rule-set': 'reglas|norma|conjunto de reglas|regla sanitaria|norma sanitaria',
  'set:recipe': 'receta|proporcion|relacion|receta de la mezcla|proporcion de la mezcla',
  'set:moisture': 'humedad|humedad de|contenido de humedad|humedad de las|humedad del|contenido de agua',
  'set:factor': 'factor|llena pesa|peso lleno|factor de|lleno pesa|peso de llena|pesa llena|pesa lleno',
  'set:litres': 'volumen|capacidad|litros|tamano|de|es de|son',
  'set:tare': 'tara|peso vacio|vacio|vacia|pesa vacio|pesa vacia',
  'set:language': 'idiomas',
  'set:cautions': 'avisos|avisos de seguridad|avisos del dia',
  'set:keep-messages': 'guardar mensajes|guardar los mensajes|guarda los mensajes',
  'set:aeration': 'aireacion',
  aeration: 'forzada|pasiva|volteada|estatica|activa|natural|hilera',
  'set:safety:emergencyNumber':
    'numero de emergencia|emergencia|emergencias|telefono de emergencia|numero de emergencias',
  'set:safety:address': 'direccion|nuestra direccion|direccion del sitio',
  'set:safety:isolator': 'interruptor principal|desconectador|aislador|breaker principal|switch principal',
  'set:safety:firstAider':
    'primeros auxilios|socorrista|encargado de primeros auxilios|encargada de primeros auxilios|persona de primeros auxilios',
  'set:accepts':
    'aceptar|aceptamos|ya no aceptamos|no aceptamos|ahora aceptamos|ya no recibimos|ya aceptamos|dejamos de aceptar|ahora recibimos|ya recibimos|ya no se acepta|ya no se aceptan|acepta|no aceptes|ya no aceptes|ya no se reciben',
  refuse:
    'ya no aceptamos|no aceptamos|ya no recibimos|dejamos de aceptar|ya no se acepta|ya no se aceptan|no aceptes|ya no aceptes|ya no se reciben',
  yes: 'si|sip|correcto|exacto|asi es|claro|ok|simon|eso|afirmativo|si por favor|eso mismo|si senor|de acuerdo|efectivamente|si claro',
  noans:
    'no|nop|ninguno|ninguna|dejalo|olvidalo|cancela|nel|ninguno de los dos|ninguna de las dos|no gracias|nada',
  'choice:first': 'el primero|la primera|primero|primera|el primer|1o|1a|la 1a',
  'choice:second': 'el segundo|la segunda|segundo|segunda|el otro|la otra|el ultimo|la ultima|2o|2a',
  'choice:each': 'cada uno|cada una|cada carrito|cada cubeta|por carrito|por cubeta',
  'choice:all':
    'todos|todas|en total|total|los dos|las dos|juntos|juntas|entre todos|entre los dos|entre las dos|todo junto',
  'weekday:monday': 'lunes|lun',
  'weekday:tuesday': 'martes',
  'weekday:wednesday': 'miercoles|mie',
  'weekday:thursday': 'jueves|jue',
  'weekday:friday': 'viernes|vie',
  'weekday:saturday': 'sabado|sab',
  'weekday:sunday': 'domingo|dom',
};
