import type { Words } from '../../lexicon.ts';

/** What things on a compost site are called in Spanish. */
export const things: Words = {
  'container:cart':
    'karrito|karritos|carito|caritos|carrillo|carrito|carritos|carro|carros|bote con ruedas|botes con ruedas|contenedor|contenedores|tote|totes|bote de basura|botes de basura|bote|botes|tambo con ruedas|tacho|tachos|bote rodante|basurero|basureros|contenedor con ruedas|contenedores con ruedas|carreton|carreton|carretones|carrito olvidado',
  'container:bucket':
    'qbeta|qbetas|kubeta|kubetas|cuveta|cuvetas|valde|valdes|cubetita|cubetitas|cubetota|cubeta|cubetas|balde|baldes|cubo|cubos|cubetada|cubetadas|cubeton|baldada|baldadas|tobo|cubeta olvidada',
  'container:bag': 'bolsa|bolsas|costal|costales|saco|sacos|bolsada|costalito',
  'container:bale': 'paca|pacas|fardo|fardos',
  'container:barrel': 'barril|barriles|tambo|tambos|tonel|toneles',
  'container:barrow':
    'karretilla|carretiya|carretiyas|caretilla|caretillas|carretilla|carretillas|carretillada|carretilladas|carreta|carretas',
  'container:loader-bucket':
    'cucharon|cucharones|pala cargadora|cucharon del cargador|cucharon del tractor|palada de tractor|cucharones del tractor|cucharones del cargador|pala del tractor|palas del tractor|pala de tractor',
  plural:
    'carritos|carros|botes con ruedas|contenedores|totes|botes|cubetas|baldes|cubos|bolsas|costales|sacos|barriles|carretillas|cucharones|tambos|cubetadas|tachos|carretilladas',
  'material:food-scraps':
    'restos de comida|sobras|desperdicios|restos|desechos de comida|comida|restos de cocina|desperdicio de comida|residuos de comida|sobras de comida|cascaras|desechos organicos|restos de alimentos|residuos organicos|desperdicios de comida|desechos de cocina|residuos de cocina|cascaras de fruta|sobras de cocina|desperdicios de cocina|restos organicos|organicos|residuos de alimentos|organico|scraps de comida|mondas',
  'material:wood-chips':
    'astillas|astillas de madera|viruta gruesa|chips|chips de madera|astilla|trozos de madera|madera triturada|madera astillada|astillitas|virutas de madera gruesas|corteza|pedazos de madera|ramas trituradas|madera picada',
  'material:sawdust':
    'aserrin|serrin|viruta|virutas|aserrin de madera|viruta de madera|aserin|virutas de madera',
  'material:leaves': 'hojas|hojas secas|hojarasca|hoja seca|hojas caidas|hoja',
  'material:cardboard': 'carton|cartones|carton triturado|carton picado',
  'material:paper': 'papel|papeles|papel triturado|periodico|papel periodico|periodicos',
  'material:straw': 'paja|heno|pacas de paja|paca de paja|zacate seco',
  'material:grass':
    'pasto|cesped|zacate|hierba|recortes de pasto|pasto cortado|recortes de cesped|grama|cesped cortado|recorte de pasto|corte de pasto|pasto fresco',
  'material:coffee-grounds':
    'posos de cafe|borra de cafe|posos|borra|cafe molido usado|residuos de cafe|cafe usado|asientos de cafe|granos de cafe|poso de cafe|broza de cafe|restos de cafe|cuncho de cafe|bagazo de cafe|cafe molido|cafe|concho de cafe|sedimento de cafe|desecho de cafe|pulpa de cafe',
  'material:garden-waste':
    'residuos de jardin|desechos de jardin|poda|restos de poda|maleza|hierbas|residuos verdes|restos de jardin|desechos verdes|ramas|malezas|podas|malas hierbas|restos del jardin|residuos de poda|deshierbe|yerbas|desperdicios de jardin|recortes de jardin',
  'material:manure':
    'estiercol|estiercol de caballo|gallinaza|estiercol de gallina|guano|abono de caballo|majada|estiercol de vaca|bosta|estiercol de pollo|caballaza',
  'material:finished-compost':
    'composta|compost|composta lista|composta terminada|compost terminado|abono|composta cernida|humus|abono terminado|compost listo|composta tamizada|abono listo|composta final|compostaje terminado',
  'material:mature-compost':
    'composta madura|compost maduro|composta vieja|abono maduro|compost viejo|abono viejo',
  'material:water': 'agua',
  'material:residue':
    'basura|residuo|plastico|plasticos|contaminantes|rechazos de basura|cubiertos|bolsas de plastico|cubiertos de plastico|pedazos de plastico|trozos de plastico|basura plastica|guantes|tenedores|cucharas|botellas|latas|popotes|unicel',
  'material:leachate': 'lixiviado|lixiviados|jugo|escurrimiento|liquido de composta|jugo de composta',
  'material:overs':
    'rechazo|rechazos|gruesos|sobretamano|rechazo de criba|grueso|rechazos de criba|sobrantes del cernido|lo grueso|sobrante|sobrantes',
  fines: 'fino|finos|cernido|lo fino|cernida|pasante|tamizado fino',
  'pilehead:pile': 'pila|pilas|monton|montones|monticulo|hilera|hileras|camellon|monto|cama|camas',
  'pilehead:bay': 'bahia|bahias|cajon|cajones|compartimiento|compartimento|compartimientos|celda',
  'pilehead:drum':
    'tambor|del tambor|tambores|cilindro|tambor rotatorio|compostera rotatoria|compostador|compostera',
  many: 'pilas|montones|bahias|hileras|tambores|cajones|camas',
  'place:exit': 'salida|salida del tambor|boca de salida',
  'place:ambient':
    'ambiente|amb|aire|afuera|exterior|temperatura ambiente|temp ambiente|ambiental|al aire|temp exterior|aire libre|ambient|temperatura exterior|temp amb|temperatura del aire|temp de afuera|temperatura de afuera|a la sombra',
  'place:floor': 'piso|suelo|losa|plancha|patio|plancha de concreto|area de trabajo|cemento',
  'place:lift':
    'elevador|elevador de carritos|volteador|montacargas|levantador|elevador de botes|volcador|lift',
  'point:top': 'arriba|parte de arriba|superior|tope|encima',
  'point:middle':
    'centro|medio|en medio|mitad de la pila|en el centro|mid|al centro|en el medio|al medio|enmedio',
  'point:bottom': 'abajo|fondo|parte de abajo|inferior|base|al fondo|en el fondo',
  'point:north': 'norte|lado norte|al norte|nte|extremo norte',
  'point:south': 'sur|lado sur|al sur|extremo sur',
  'point:east': 'este lado|oriente|lado este|al este|extremo este',
  'point:west': 'oeste|lado oeste|poniente|al oeste|extremo oeste',
  'point:front': 'frente|adelante|al frente|enfrente',
  'point:back': 'atras|detras|parte de atras|trasera',
  'point:core': 'nucleo|corazon|interior|adentro|en el corazon',
  'point:edge': 'orilla|borde|orillas|bordes|costado',
  'layer:geotextile':
    'geotextil|tela|tela geotextil|malla|tela respirable|manta|tela transpirable|manta geotextil|geo|membrana|geotextile|cubierta respirable',
  'layer:tarp': 'lona|lonas|lona azul|plastico negro|toldo|carpa|hule|tarp|encerado|nailon|lonita',
  'layer:unspecified': 'cubierta|tapa|cobertura|tapadera|cobija',
  'feel:dry':
    'seca|seco|muy seca|muy seco|demasiado seca|demasiado seco|reseca|reseco|bastante seca|polvorienta|un poco seca|resequedad|algo seca|sequita|super seca|bien seca|bien seco|esta seca|medio seca|secas|muy secas|bastante seco|algo seco|un poco seco|demasiado secas|polvosa|requeteseca|sequisima|mas seca que|resequita|muy reseca|sin humedad|quebradiza|falta agua|le falta agua|falta humedad|le falta humedad|le falta mucha agua|no tiene humedad|poca humedad',
  'feel:right':
    'bien de humedad|perfecta|justa|en su punto|humedad buena|humedad correcta|un par de gotas|una gota|dos gotas|humeda bien|como esponja|esponja exprimida|buena humedad|humedad bien|perfecto|humeda|humedo|justo bien|2 gotas|1 gota|unas gotas|como esponja exprimida|humedad perfecta|una o dos gotas|una gota o dos|una gotita o dos|una o dos gotitas|1 gota o 2|ideal|humedad ok|optima|correcta|al punto|un par de gotitas|esta bien|una gotita|como debe ser|justo|bien|humeditas|humedita|en el punto|1 o 2 gotas|unas gotitas|unas cuantas gotas|un par de gotas apenas|humedas|exacta|de lujo|ni seca ni mojada',
  'feel:wet':
    'mojada|mojado|muy mojada|muy mojado|empapada|empapado|demasiado mojada|encharcada|muy humeda|demasiado humeda|aguada|ensopada|pasada de agua|algo mojada|un poco mojada|bastante mojada|bien mojada|super mojada|enlodada|mojadisima|remojada|bien empapada|toda mojada|mojadas|lodosa|muy aguada|demasiado mojado|muy humedo|demasiado humedo|empapadas|saturada|medio mojada|aguadita|batida|empapadisima|chiclosa|chorreada|super empapada|totalmente empapada|anegada|muy mojadas|bien aguada',
  'feel:dripping':
    'gotea|goteando|escurre|escurriendo|chorreando|chorrea|escurre agua|sale agua|sale chorro|chorrea agua|chorro de agua|gotea al apretar|escurre al apretar|escurre al apretarla|gotea al apretarla|chorrea al apretarla|gotea mucho|chorreante|le sale agua|sale un chorro|escurre mucha agua|sale mucha agua|salio agua|le escurre agua|gotea cuando la aprieto|chorreando agua|escurriendo agua|sale un chorro de agua|chorrea cuando la aprietas|le sale un chorro',
  squeeze:
    'prueba del puno|prueba del puno|prueba de puno|prueba del apreton|humedad|al apretar|aprete|exprimi|apretada|al exprimir|prueba del punado|puno|salieron|sale|salio|punado|punado|contenido de humedad|al apretarla|se aprieta|al tacto|test del puno|prueba de humedad|prueba de mano|cuando la aprieto|prueba del apreton de mano|al exprimirla|apretandola|hice la prueba|prueba|squeeze test|prueba de la esponja|prueba de la mano|humedad de|humedad del|prueba del puno en|se siente|la siento|al apretar sale|cuando aprieto|exprimiendo|aprete un punado|apretamos|apretamos un punado|apriete',
  'topic:odour':
    'olor|olores|huele|huele mal|apesta|huele feo|peste|huele a podrido|amoniaco|mal olor|apestoso|apestosa|huele a amoniaco|olia|hedor|huele fuerte|olor a podrido|olor fuerte|olor feo|huelen|huele horrible|malos olores|tufo|huele a huevo podrido|olor a amoniaco|pestilencia|apestando|huele a huevos podridos|olor a huevo podrido|apesta a amoniaco|huele re feo|huele bien feo|olia mal|olor a huevo|huele muy mal|hiede|huele muy feo|olor raro|oliendo|oliendo mal|oliendo feo|huelen mal|huevo podrido',
  'topic:leachate':
    'lixiviado|lixiviados|charco|charcos|fuga|se esta saliendo|escurrimiento|jugo|liquido|derrama liquido|liquido cafe|gotera|encharcamiento|charco de lixiviado|escurre liquido|esta escurriendo|agua cafe|liquido negro|agua negra|escurre jugo|jugos|se sale el jugo|saliendo jugo|saliendo liquido|charcos de jugo|charco de jugo|goteando liquido|agua sucia|tirando jugo|tirando liquido',
  'topic:flies':
    'moscas|mosca|gusanos|larvas|mosquitas|moscos|mosquitos|gusano|mosquita|mosquitos de fruta|moscas de fruta|nube de moscas|mosquerio|moscerio|mosquero|mosca de la fruta|gusanitos|cresas',
  'topic:pests':
    'rata|ratas|raton|ratones|mapache|mapaches|roedor|roedores|plaga|plagas|gaviotas|zorrillo|zorrillos|cuervos|zorro|tlacuache|hoyos de rata|avispas|nido de avispas|excremento de rata|tlacuaches|ardillas|ardilla|cucarachas|excrementos|caca de rata|caca de raton|hoyo de rata|oso|madriguera|hormigas|zarigueya|popo de rata|cuervo|madrigueras|perros|avispero|coyote|coyotes',
  'topic:freezing':
    'congelada|congelado|congelados|congeladas|helada|helado|hielo|hecho hielo|se congelo|congelo|se helo|se congelaron|hecha hielo|tiene hielo|duro de hielo|congeladisima|con hielo',
  'topic:fault':
    'roto|rota|descompuesto|descompuesta|atascado|atascada|atorado|atorada|no gira|no funciona|no sirve|no prende|no arranca|se trabo|se atoro|falla|fallando|trabado|trabada|averiado|averiada|no jala|hace ruido|rechina|no sube|error|alarma|no baja|quebrado|quebrada|se descompuso|se rompio|dejo de funcionar|dejo de girar|no quiere arrancar|ponchada|no enciende|se quebro|llanta ponchada|se atasco|no esta funcionando|ruido raro|tronado|tronada|quemado|quemada el motor|no abre|no cierra|tapada|se paro|se detuvo|no da vuelta|no se mueve|desinflada|no quiere prender|no quiere subir|hace un ruido raro|se zafo|suelto|doblado|doblada|rajado|rajada|se dano|danado|danada|agujerada|agujereada|agujereado|ya no funciona|ya no sirve|ya no gira|ya no prende|ya no jala|rompio|esta fallando|con falla|se tapo|oxidada|oxidado|esta rota|esta roto|no responde|se bloqueo|bloqueado|bloqueada|anda mal|se salio la cadena|se revento|sin pila|no cierra bien|se atora|chilla|truena|esta partido|esta partida',
  'topic:power':
    'sin luz|se fue la luz|no hay luz|apagon|sin electricidad|no hay electricidad|se fue la corriente|sin corriente|corte de luz|no hay corriente|corte de energia|se boto el breaker|breaker botado|se fue la energia|sin energia|no tenemos luz|cortaron la luz|estamos sin luz|falla electrica|se boto la pastilla|salto el breaker|falla de luz|se cayo la luz|se bajo el breaker|se boto el switch',
  'topic:spill':
    'derrame|se derramo|derramado|derramada|se volteo|tirado|se cayo|volcado|volcada|se tiro|se derramaron|se tiraron|derramo|se volco|regado|se rego|regada|se me cayo|se me volteo|se me derramo|se desparramo|desparramado|tiradero|se vacio en el piso',
  'topic:contamination':
    'contaminacion|plastico en|encontre plastico|vidrio en|encontramos plastico|encontre una bolsa|vidrio|encontre|vidrio roto|vidrios|encontramos|encontre vidrio|cubiertos en|encontramos vidrio|plastico por todos lados|mucho plastico|mucho plastico en|unicel|metal|bolsas de plastico en|bolsa de plastico en|vidrio quebrado|aluminio|hay plastico en|habia plastico en|mucha basura en',
  'topic:complaint':
    'queja|quejas|se quejo|se quejaron|se queja|se quejan|reclamo|reclamos|se quejo de|se queja de|se andan quejando|anda quejandose|reclamo por|quejandose',
  contaminated:
    'contaminado|contaminada|contaminados|contaminadas|con plastico|con plasticos|con plastico adentro|venia con plastico|contaminado con plastico|tiene plastico|trae plastico|con basura|contaminacion|sucio|con vidrio|venia contaminado|venia contaminada|con bolsas de plastico|plastico adentro|con contaminantes|mucho plastico|plastico dentro|salio contaminada|salio contaminado|con tenedores|con cubiertos|contaminada con plastico|con basura adentro|contaminado con|contaminada con|contaminados con|contaminadas con|con guantes',
  machine:
    'ventilador|soplador|motor|engrane|banda|cadena|puerta|compuerta|bomba|manguera|bascula|balanza|termometro|sonda|cargador|tractor|criba|cernidor|trituradora|reja|porton|sensor|panel|boton de paro|paro de emergencia|rueda|llanta|luz|luces|mezcladora|llave|astilladora|ruedas|candado|tamiz|zaranda|interruptor|eje|balero|hidrolavadora|cerca|cerradura|foco|focos|malla de la criba|pala|palas|rastrillo|lavabo|fregadero|pantalla|chapa|bisagra|mango|valvula|desbrozadora|remolque|troca|camioneta|bobcat|cargadora|bieldo|horca|trinche|tractorcito',
  person:
    'vecino|vecina|vecinos|visitante|alguien|personas|persona|voluntarios|voluntario|gente|estudiantes|ayudantes|voluntarias|voluntaria|companeros|trabajadores|senora|senor|vecinas|muchachos|chavos|ninos|alumnos|papas|nosotros|estudiante|equipo|jardineros|ayudante|amigos|jovenes|cuates|maestra|maestro',
  'weather:rain':
    'lluvia|lluvias|llueve|llovio|lloviendo|tormenta|tormentas|aguacero|chubascos|va a llover|esta lloviendo|llover|lluvia fuerte|lluvias fuertes|llovizna|aguaceros|chubasco|mucha lluvia|viene lluvia|tormenta electrica|lloviznas|lluvia intensa|llovera|fuertes lluvias',
  'weather:frost':
    'helada|heladas|escarcha|hielo negro|bajo cero|frio intenso|congelante|helada fuerte|va a helar|helara|mucho frio|temperaturas bajo cero|frente frio|caera helada|frio fuerte|escarcha fuerte',
  'weather:snow':
    'nieve|nevada|nevando|nevo|nieva|va a nevar|nevadas|tormenta de nieve|ventisca|nevara|nevar|caera nieve|nevo mucho|aguanieve',
  'weather:heat':
    'ola de calor|calor|calor fuerte|mucho calor|calor extremo|caloron|caloron|calor intenso|alerta de calor|calores|canicula|aviso de calor|calorones|calor sofocante|onda de calor',
  'weather:wind':
    'viento|vientos|viento fuerte|vientos fuertes|rafagas|ventarron|mucho viento|ventarrones|aire fuerte|rachas|vendaval|ventoso|rachas de viento|rafagas de viento|fuertes vientos|vientos muy fuertes|viento muy fuerte',
  forecast:
    'pronostico|pronostican|se espera|se esperan|anuncian|dicen que|viene|va a|alerta|para|pronosticada|esperan|anunciaron|habra|se viene|aviso|esta pronosticada|dan|pronosticado|vienen|posible|probable|dicen que viene|por venir|pronosticados|pronosticadas|el pronostico dice|segun el pronostico|dice el pronostico|hay pronostico de|caera|dan lluvia|van a|avisan|anunciada|anunciado|hay alerta|esperada|esperado|advertencia|esperamos|se pronostica|se pronostican|anuncia|va a haber|va a estar|se acerca|entra|se anuncia|amenaza|posibilidad de|con posibilidad de',
  observed:
    'cayo|cayeron|hubo|pluviometro|llovio|en el pluviometro|tuvimos|cayendo|llovieron|recibimos|registramos|nevo|marco el pluviometro|marco el pluviometro|nos cayo|nos cayeron',
};
