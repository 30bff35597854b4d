/** Common first names: words that no slip is mended in, and that may be anybody's. */
export const firstNames = `
  aaron abby adam adele adrian agnes ahmed aicha aiden alain alan albert alberto alejandro alex alexis
  alfredo ali alice alicia amelia amina amy ana andre andrea andres andrew angel angela anita anna
  anne annie antoine antonio arthur bea beatriz ben benoit bernard beth bob brad brian bruno camila
  camille carla carlos carmen carol caroline catherine cecile celia cesar chad charles charlie chloe
  chris christine claire clara claude claudia craig cris cristina dan dani daniel danny dave david
  dean denis diana diego don doug ed eddie eduardo elena eli elias elisa elise elsa emile emily emma
  enrique eric erica erika esteban ethan eva evan fabien fatima felipe felix fernando flora florence
  fran francis francisco frank fred gabriel gary george gerard gilles gina glen gloria grace greg
  guillaume gus gustavo hal hanna hans harry hassan hector helen helene henri henry hugo ian ibrahim
  ines irene iris isabel ivan jack jacob jacques jaime jake james jamie jan jane javier jay jean jeff
  jen jenny jeremy jerome jesse jessica jill jim jo joan joao joe joel john jon jordan jorge jose josh
  juan juana judy julia julie julien karen karim karl kate kathy keith kelly ken kevin kim kurt kyle
  laura laurent lea lee lena leo leon leslie liam lily linda lisa liz lola lou louis louise luc lucas
  lucia lucie lucy luigi luis luisa luke lupe lynn mae malik manu manuel marc marco marcos margot
  maria marie mario marion mark marta martin mary mateo mathieu matt maud max maya megan mehdi mel mia
  michael michel miguel mike mila mina mireille mo mohamed moira molly monica nadia nancy naomi nate
  ned neil nelly nick nico nicolas nina noah nora norma olga oliver olivia omar oscar pablo paco
  paloma pam pascal pat patrick paul paula pedro pepe pete peter phil philippe pierre rachel rafael
  ralph ramon raul ray rebecca rene rhys ricardo rich richard rick rita rob robert roberto robin rod
  rodrigo roger roman ron rosa rose rosie ross roy ruben russ ruth ryan sal sally sam samir samuel
  sandra santiago sara sarah scott sean seb serge sergio sheila silvia simon sofia sofie sonia sophie
  stan steph stephane steve sue susan sylvie tara ted teo teresa theo thierry thomas tim tina toby
  todd tom tomas tony tracy tyler vera vic victor vincent violet wade walter wendy will willy xavier
  yann yusuf yves zac zoe
`;
