import type { Words } from '../../lexicon.ts';

/** The rest of the Spanish words: links, checks, laboratory terms, and what turns up beside a trouble. */
export const more: Words = {
  // A link that says something lies on a pile, not in it.
  atop: 'por encima de|encima de|arriba de',
  be: 'es|esta|estan|son|fue|estaba|era|estar|ser|sigue|estuvo|quedo|amanecio',
  numstart: 'ciento|cien',
  // What opens a clause that only tells when or why.
  aside:
    'para que|para que respire|para que no|por si|para airear|para secar|antes de|antes que|antes del|antes de que|despues de|despues del|despues de que|porque|ya que|mientras|por la|por el|por las|por los|luego de|debido a|para que|por que|pa que',
  // What is said of the air before its degrees.
  itis: 'hace|hacen|hacia|estamos a|estan haciendo|esta haciendo|estamos en|tenemos',
  numero: 'numero|num|nro',
  between: 'entre',
  fill: 'don|dona|el senor|la senora|con tapa|con la tapa|con su tapa|sin tapa|con tapadera|despues de voltear|antes de voltear|despues de voltearla|antes de voltearla|despues del volteo|se me olvido anotar|se me olvido apuntar|se me olvido registrar|se me olvido poner|se me olvido decir|olvide anotar|olvide apuntar|olvide registrar|olvide poner|olvide decirles|se me paso anotar|falto anotar|falto apuntar|les cuento|para anotar|para el registro|no anote|no apunte|me falto anotar|me falto apuntar|aqui les va|ahi les va|va lo de hoy|lo de hoy|lo de ayer',
  neg: 'se me olvido|se me paso|olvide|olvidamos|se nos olvido|me falto|nos falto|falto',
  shifted: 'movimos|movi|movida|movido|se movio|trasladamos|traslade|trasladada|cambiamos|reubicamos',
  gave: 'di|dimos|le di|le dimos|le echamos|echamos|le eche',
  turnname: 'voltear|voltearla|voltearse|vuelta|volteo|volteada|voltearlas|darle vuelta',
  rangeword: 'a|y|hasta',
  degree:
    'caliente|tibia|calientita|calentando|bien caliente|enfriandose|subiendo|cocinando|todavia caliente|se esta calentando|fria|enfriada|se enfrio|tibiecita|calentita|helandose|calientito|bien fria',
  because:
    'traia|traian|venia con|venian con|tenia|tenian|porque traia|por traer|con puro|con mucho|con mucha|lleno de|llena de|estaba lleno de|estaba llena de|habia|porque|llenos de|llenas de|lleno de|llena de|demasiado|por|ya que|estaba|estaban|tenia|tenian|traia|traian|venian con|venia con|motivo|mucho|contaminado con|contaminada con|contaminados con|contaminadas con|con|por culpa de|debido a|razon|puro',
  testweight:
    'pesa de|peso de prueba|pesa patron|pesa de prueba|peso patron|pesa de calibracion|peso de referencia|peso de|pesa|pesa de referencia|peso conocido|pesa conocida|peso de calibracion',
  'analyte:moisture': 'humedad|contenido de humedad|contenido de agua',
  'analyte:ash': 'cenizas|ceniza',
  'analyte:pH': 'ph',
  'analyte:E. coli': 'e coli|ecoli|e. coli|e . coli',
  'analyte:Salmonella': 'salmonela|salmonella|salmonelas',
  'analyte:faecal-coliforms': 'coliformes fecales|coliformes|coliforme fecal',
  'analyte:EC': 'conductividad|conductividad electrica|ce|salinidad|sales solubles|ec',
  'analyte:C:N':
    'cn|c n|relacion cn|relacion c n|c / n|c : n|relacion carbono nitrogeno|relacion c / n|relacion c : n|ratio c n|razon c n|razon c / n|carbono nitrogeno',
  'analyte:dry matter': 'materia seca|solidos totales',
  'analyte:lead': 'plomo',
  'analyte:cadmium': 'cadmio',
  'analyte:copper': 'cobre',
  'analyte:zinc': 'zinc|cinc',
  'analyte:nickel': 'niquel',
  'analyte:arsenic': 'arsenico',
  'analyte:mercury': 'mercurio',
  'analyte:chromium': 'cromo',
  'analyte:nitrogen': 'nitrogeno|nitrogeno total',
  'analyte:phosphorus': 'fosforo',
  'analyte:potassium': 'potasio',
  'analyte:carbon': 'carbono|carbono organico',
  'analyte:organic-matter': 'materia organica|mo',
  'analyte:ammonium': 'amonio',
  'analyte:nitrate': 'nitrato|nitratos',
  'analyte:stability': 'respiracion|estabilidad',
  'analyte:maturity': 'madurez|indice de madurez',
  'analyte:self-heating':
    'autocalentamiento|auto calentamiento|prueba de autocalentamiento|dewar|ensayo dewar',
  'labunit:MPN/g': 'nmp / g|nmp por g|mpn / g|nmp|nmp por gramo|mpn',
  'labunit:MPN/4 g': 'nmp / 4 g|mpn / 4 g|nmp por 4 g',
  'labunit:CFU/g': 'ufc / g|ufc por g|ufc|cfu / g|ufc por gramo',
  'labunit:mg/kg': 'mg / kg|mg por kg|ppm',
  'labunit:dS/m': 'ds / m|ds por m|ds m',
  'labunit:mS/cm': 'ms / cm',
  below: 'menos de|menor a|menor que|por debajo de|<|bajo|debajo de|inferior a|menor de',
  above: 'mas de|mayor a|mayor que|arriba de|>|supera|por encima de|superior a|mayor de',
  absent:
    'no detectada|no detectado|nd|ausente|negativo|negativa|ausencia|no se detecto|no detectable|ninguna deteccion|no detectados|no detectadas|salio negativo|salio negativa|no hay|no aparecio|indetectable',
  sink: 'granja|jardin|jardines|campo|basurero|relleno|relleno sanitario|vecinos|jardineros|huerto|huertos|parcelas|parque|drenaje|vivero|clientes|miembros|comunidad|familias|rancho|huerto comunitario|huerta|publico|basura|ciudad|dompe|vertedero|contenedor de basura|invernadero|alcantarilla|camas|jardin comunitario|parcela|tiradero municipal|la gente|voluntarios|rosales|hortaliza|macetas|jardin escolar|padres|escuela|socios|camellones',
  toword:
    'fueron a|fue a|vendimos a|mandamos a|entregamos a|regalamos a|dimos a|le dimos|le vendimos|les dimos|donamos a|enviamos a|le entregamos|le regalamos|entregamos al|mandamos al|donamos al|les regalamos',
  seen: 'vi|vimos|hay|encontre|aparecio|note|viene|alrededor|cerca|por|otra vez|lleno|llena|sale|salen|en|varias|varios|habia|muerto|muerta|vivo|anda|andan|rondando|se metio|escarbando|hoyos|hoyo|nido|entro|entraron|metido|metida|metidos|mordida|mordio|ruido|un|una|todavia|sigue|siguen|visto|vista|vieron|andaba|corriendo|comiendo|se metieron|salieron|rastros|rastro de|senales de|tiene|tienen|tenemos|detecte|saliendo|andaban|excavando|de nuevo',
  // Rooms and grounds about a site: no place that the log knows.
  border: 'valla|la cerca|barda|lindero|limite del terreno|perimetro',
  spot: 'bodega|cobertizo|oficina|caseta|sitio|taller|galpon|patio',
  // The writer among those who worked.
  'self:one': 'yo|yo mismo|yo misma',
  // Words that announce an entry made late.
  forgotten:
    'olvide|se me olvido|olvidado|atrasado|tarde|olvide anotar|olvide apuntar|se me olvido anotar|se me paso|me falto',
  gloss:
    'apenas|salieron|salio|sale|se siente|se desmorona|brilla|se mantiene|ocupa agua|de verdad|hace bola|forma bola|se deshace|le salieron|sudando|cobertizo|bodega|galera|oficina|patio|entrada|caseta|taller',
  there: 'ahi|alli|aca|ahi mismo',
  ok: 'ok|bien|buena|bueno|funciona|paso|todo bien|sin novedad|sirve|en orden|todo en orden|correcto|correcta|pasa|todo ok|sin problemas|funciona bien|funcionando|funcionando bien|sin problema|perfecto|perfecta|exacta|nada raro|al cien|lista|listo',
  done: 'hecho|hecha|terminado|listo|lista|hice|completado|hechos|ya|completada|hicimos|cumplido',
  self: 'yo|nosotros|nosotras|sola|solo',
  'amend:change': 'cambia|corrige|reemplaza|modifica|cambiar|edita|corregir',
  'amend:instead': 'en vez de|en lugar de|y no',
  'amend:':
    'era|eran|debe ser|deberia ser|debia ser|quise decir|en realidad|fue|fueron|en realidad era|el ultimo era|la ultima era|pon|mejor dicho|eso era|eso fue|en realidad fue|en realidad eran|en realidad fueron|me equivoque era|me equivoque|perdon|correccion|deberia decir|debe decir|debia decir|la anterior era|lo anterior era|el anterior era|son|es|el ultimo fue|la ultima fue',
  was: 'era|fue|es|eran|fueron|son',
  need: 'necesitamos|necesito|hacen falta|hace falta|falta|ocupo|ocupamos|agrego|le pongo|le echo|ponemos|echamos|agregar|se necesitan|se ocupan|requerimos|pongo|echo',
  dateword:
    'hoy|esta semana|este ano|ahora|esta noche|manana|este mes|esta manana|por ahora|ahorita|hasta ahora|hasta hoy|actualmente|ya|de hoy|en este momento|todavia|pronto',
  'order:dmy': 'dia primero|dia mes ano|dd / mm / aaaa|dd / mm|primero el dia',
  'order:mdy': 'mes primero|mes dia ano|mm / dd / aaaa|primero el mes|mm / dd',
  'order:ymd': 'ano primero|ano mes dia|aaaa - mm - dd|primero el ano',
  per: 'por|al|a',
  yearword: 'ano|anual|al ano|por ano|anuales|anualmente',
  'byword:volume': 'por volumen|en volumen',
  'byword:mass': 'por peso|en peso|por masa',
  'chorename:sweep': 'barrer|el barrido|barrer el piso|la barrida|el piso',
  'chorename:wash-lift': 'lavar el elevador|limpiar el elevador|el elevador',
  'chorename:wash-containers':
    'lavar cubetas|lavar las cubetas|lavar los carritos|lavado de cubetas|lavar carritos|lavar los botes|las cubetas|los carritos|el lavado de cubetas|lavar los baldes|lavar baldes|limpiar las cubetas',
  'chorename:clean-tools':
    'limpiar herramientas|limpiar las herramientas|lavar las herramientas|las herramientas|limpieza de herramientas|la limpieza de herramientas',
  'chorename:check-fan': 'revisar el ventilador|revision del ventilador',
  'chorename:check-scale':
    'revisar la bascula|calibrar la bascula|revision de la bascula|la bascula|la revision de la bascula',
  'chorename:check-thermometer':
    'revisar el termometro|revision del termometro|calibrar el termometro|el termometro',
  'chorename:check-stop-button':
    'probar el boton de paro|probar el paro de emergencia|el boton de paro|la prueba del boton de paro',
  'chorename:check-odour': 'revisar olores|ronda de olores|revisar los olores|los olores|la ronda de olores',
  'chorename:lock-gate':
    'cerrar el porton|cerrar la reja|cerrar con llave|el porton|la reja|cerrar la puerta',
  'chorename:inspect': 'inspeccionar|la inspeccion|el recorrido|la ronda|hacer la ronda|hacer el recorrido',
  'chorename:watered': 'riego|el riego|regar las pilas',
  'chorename:squeeze-test': 'la prueba del puno|prueba del puno|la prueba de puno',
  'chorename:temperature':
    'las temperaturas|tomar temperaturas|tomar la temperatura|toma de temperaturas|tomar las temperaturas|las lecturas',
  'chorename:turning': 'el volteo|la volteada',
  fell: '',
  qualifier: 'bajo',
};
