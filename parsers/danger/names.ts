/** Common first names that are no other word: somebody, and never a slip of anything else. */
export const firstNames = `
  aaron abby adam adele adrian agnes ahmed aicha aiden alain alan albert alberto alejandro alex alexis
  alfredo alice alicia amelia amina amy ana andre andrea andres andrew angel angela anita anna anne
  annie antoine antonio arthur beatriz ben benoit bernard beth bob brad brian bruno camila camille
  carla carlos carmen caroline catherine cecile celia cesar charles charlie chloe chris christine
  claire claude claudia craig cris cristina dan dani daniel danny dave david denis diana diego doug ed
  eddie eduardo elena eli elias elisa elise elsa emile emily emma enrique eric erica erika esteban
  ethan eva evan fabien fatima felipe felix fernando fran francis francisco frank fred gabriel gary
  george gerard gilles gina glen gloria greg guillaume gustavo hal hanna hans harry hassan hector
  helen helene henri henry hugo ian ibrahim ines irene isabel ivan jacob jacques jaime jake james
  jamie jan jane javier jay jean jeff jen jenny jeremy jerome jesse jessica jill jim jo joan joao joe
  joel john jon jordan jorge jose josh juan juana judy julia julie julien karen karim karl kate kathy
  keith kelly ken kevin kim kurt kyle laura laurent lea lee lena leo leon leslie liam lily linda lisa
  liz lola lou louis louise luc lucas lucia lucie lucy luigi luis luisa luke lupe lynn mae malik manu
  manuel marc marco marcos margot maria marie mario marion marta martin mary mateo mathieu matt maud
  maya megan mehdi mel michael michel miguel mike mila mireille mohamed moira molly monica nadia nancy
  naomi nate ned neil nelly nick nico nicolas nina noah nora norma olga oliver olivia omar oscar pablo
  paco paloma pam pascal patrick paul paula pedro pepe pete peter phil philippe pierre rachel rafael
  ralph ramon raul ray rebecca rene rhys ricardo richard rick rita robert roberto robin rod rodrigo
  roger ron rosa rosie ross roy ruben russ ruth ryan sally sam samir samuel sandra santiago sara sarah
  scott sean seb serge sergio sheila silvia simon sofia sofie sonia sophie stan steph stephane steve
  susan sylvie tara ted teo teresa theo thierry thomas tim tina toby todd tom tomas tony tracy tyler
  vera vic victor vincent wade walter wendy willy xavier yann yusuf yves zac zoe
  beto chuy lalo chayo nacho chema lupita paquito jorgito quique kike
  jeanne gaetan ginette lucien marcel normand huguette solange yvon germain jocelyne
  ollie alfie archie freddie mick mickey betty peggy gus hank chuck kenny jimmy bobby
`;
