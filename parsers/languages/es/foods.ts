import type { Words } from '../../lexicon.ts';

/** Food and garden things that come in by themselves, how they are described, and what does not belong in a load. */
export const foods: Words = {
  food: 'manzanas|manzana|platanos|platano|guineos|guineo|bananas|banano|bananos|cascaras de platano|naranjas|cascaras de naranja|cascara de naranja|limones|peras|duraznos|ciruelas|uvas|cerezas|fresas|melones|melon|sandias|sandia|pinas|pina|cascaras de pina|mangos|mango|aguacates|aguacate|papayas|papaya|guayabas|calabazas|calabaza|calabacitas|pepinos|pepino|tomates|tomate|jitomates|jitomate|chiles|berenjenas|papas|papa|cascaras de papa|camote|camotes|yuca|name|cebollas|cebolla|ajo|zanahorias|zanahoria|betabel|rabanos|lechuga|lechugas|repollo|repollos|col|coles|espinacas|acelgas|brocoli|coliflor|apio|maiz|elotes|olotes|hojas de maiz|hojas de elote|frijoles|arroz|pasta|pan|pan duro|pan viejo|tortillas|tortillas duras|masa|avena|cascaron|cascarones|cascaras de huevo|cascara de huevo|bolsas de te|hojas de te|fruta|frutas|verdura|verduras|vegetales|ensalada|nopales|nopal|bagazo|orujo|flores|flores secas|algas|pinocha|ramitas|cascaras de mani|habichuelas|gandules|viandas|cocos|coco|patatas|melocotones|huevos|cascaras|pulpa|pulpa de manzana|plumas|lana|pescado|hongos|moras|calabacines|ceniza|corteza',
  adj: 'viejo|vieja|viejos|viejas|duro|dura|duros|duras|podrido|podrida|podridos|podridas|pasado|pasada|pasados|pasadas|azul|azules|rojo|roja|verde|verdes|negro|negra|blanco|blanca|amarillo|amarilla|gris|grande|grandes|chico|chica|chicos|chicas|pequeno|pequena|nuevo|nueva|pesado|pesada|cocido|cocida|crudo|cruda|maduros|maduras|golpeados|golpeadas',
  contaminant:
    'tenedor|tenedores|cucharas|cuchara|cuchillos|cubiertos|envoltura|envolturas|plastico|plasticos|bolsa de plastico|bolsas de plastico|bolsas|vidrio|vidrios|guantes|guante|etiquetas|calcomanias|popotes|sorbetos|latas|lata|botella|botellas|aluminio|vasos|vaso|tapas|ligas|hilo|unicel|panales|pilas usadas|baterias|metal|basura|empaques|envases|cinta|alambre|grapas|juguetes|colillas',
  fullof: 'llena de|lleno de|llenas de|llenos de|hasta el tope de|hasta arriba de|repleta de|repleto de',
  within:
    'adentro|dentro|mezclado|mezclada|mezclados|mezcladas|revuelto|revuelta|revueltos|en medio|ahi dentro|ahi adentro|por dentro',
};
