/** Spanish words one letter away from a word of the trade, and words in their own right: no slips of the pen. */
export const everyday = `
    frio abra acerca adan agente aguda aguja ala alla ama aman amar amos ana anada andado anterior apache
    aprecio apto arado aragon aran arca arco arma armonia arte asco ata atajo ave aves baile barca barra
    basa basta baste bel bela besar beso bobo bonita borro bota breton breve buche burra cabo cabrito
    caja calla callando calma cana canon cara carlo carlos carpeta caso castilla cata caton cava cebo
    celta cera certeza chan che checo cho ciego cielo ciervo cima clave coger coja col cola color
    comporta conde contado corra corro cortado coste cran crecer cria criada criado cuba cuco cuero
    cunada cuya cuyo dama danes dano debate dedo delante dese diego diente din dino dios dolor don drama
    duelo eco efusion empiece encerrado enero entendida envio errar espuela eta etapa extra fallo falsa
    falte fama far fase feria fia fiel fil filo flor fonda fuente gala gana ganada ganado gata gen goce
    gorra grajo grant grata grato griego gris guapo gusto hacha heroe herradura hilo honra hoya indicio
    iota jarro jeta labra lama leal lecho lena lina lisa llaga llano llosa lobo lord luna luto mago maja
    mama mana manco mandado mando mansa mapa mar marea maria marta marzo mata matar mate mato mear mecha
    mente mero mesa metodo miente mios mirada mirado misa mito moco moda mona monje mono monta monzon
    mora moro mosto muera muro nabo nave negada negado negar nodo nudo oido onde opuesto oreja paco paga
    palida palo pano papo pario parto pasito paste pata patas pato paul peca pecado pecho pedo peer pega
    pena pensado pepa pepe pescado pica pico piel pio pisa pista pito placa plata plaza plena pope posa
    posada postal prado pre preparada presta presto proto puerto pulsada punta quema quino rabia rabo
    raiz ramon rana raya rene res rezar riesgo rito robo roca rocin rodas roja rojo roma roman ron
    roques rosa rueca ruego ruin ruta sabia sabio sabor sal sala saliente salir salve salvo san sano
    santa sapo sayo sed seda serie seso sexo simple sino sucia sueco suela sumo susto tac tacto tan tao
    tapia tarda tasa tau techo tecla tema temer tena teta tiento tigre tilde timo tino tipo tiro tonto
    topa toro trago tratado trato traza trazado trazo tri trilla trote truco tuerto turco tuyas tuyo
    unica valida valiente valor vano vargas vela vencer venda venta venus vicio vida vil vina viva
    vivido vosotros vuestra vuestras yugo zorra`;
