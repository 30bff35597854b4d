import type { Words } from '../../lexicon.ts';

/** Food and garden things that come in by themselves, how they are described, and what does not belong in a load. */
export const foods: Words = {
  food: 'pommes|pomme|bananes|banane|pelures de bananes|pelures de banane|oranges|pelures d orange|citrons|poires|peches|prunes|raisins|cerises|fraises|melons|melon|pasteques|pasteque|melons d eau|ananas|mangues|avocats|noyaux d avocat|citrouilles|citrouille|courges|courge|courgettes|concombres|tomates|tomate|poivrons|aubergines|patates|pommes de terre|pelures de patates|pelures de patate|pelures de pommes de terre|oignons|pelures d oignon|pelures d oignons|ail|carottes|carotte|pelures de carottes|pelures de carotte|fanes de carottes|betteraves|navets|radis|laitue|laitues|salade|choux|chou|kale|epinards|brocoli|chou fleur|celeri|mais|epluchures de mais|feuilles de mais|haricots|pois|riz|pates|pain|pain sec|vieux pain|croutes de pain|coquilles d oeufs|coquilles d oeuf|poches de the|sachets de the|feuilles de the|fruits|legumes|pelures de legumes|epluchures de legumes|dreche|marc de pommes|marc de raisin|fleurs|fleurs fanees|algues|aiguilles de pin|branches|brindilles|plants de tomates|ecales',
  adj: 'vieux|vieille|vieilles|pourri|pourris|pourrie|pourries|moisi|moisie|moisis|sec|seche|secs|seches|bleu|bleue|bleus|rouge|rouges|vert|verte|noir|noire|blanc|blanche|jaune|gris|grise|brun|brune|gros|grosse|grand|grande|petit|petite|nouveau|nouvelle|lourd|lourde|cuit|cuits|cru|crus|trop murs|trop mures|fanees',
  contaminant:
    'fourchette|fourchettes|cuilleres|couteaux|ustensiles|emballage|emballages|plastique|plastiques|sac de plastique|sacs de plastique|sac plastique|sacs plastique|vitre|verre|gants|gant|collants|etiquettes|pailles|canettes|canette|bouteille|bouteilles|papier alu|aluminium|gobelets|gobelet|couvercles|elastiques|ficelle|styromousse|couches|couche|piles|metal|dechets|vidanges|sachets|ruban|broche|agrafes|jouets|megots',
  fullof: 'plein de|pleine de|pleins de|pleines de|rempli de|remplie de|plein d|pleine d',
  within: 'dedans|a l interieur|melange dedans|mele dedans|la dedans',
};
