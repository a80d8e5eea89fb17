import { saidOf } from '../../foods/phrases';
import { formName } from '../../foods/tables';
import { readJar } from '../../words/jar';
import type { Product } from './making';

/** What several jars of a size are called: `pints`. */
const jarsCalled = (jar: string): string => readJar(jar).size?.plural ?? `${jar} jars`;

/** What it is filled into, in words: ` in pints`; nothing where it goes into no jars. */
export const inJars = (jar: string | undefined): string => (jar === undefined ? '' : ` in ${jarsCalled(jar)}`);

/** A page for more foods than this is called after the food, not after the page. */
const FEW = 3;

const inJar = (form: string | undefined): string | undefined => (form === undefined ? undefined : formName(form));

/** What a product is called: `plums, whole, in pints`, `apple slices, dried`, `chile salsa in pints`. */
export function nameOf({ wanted, row, food, lots, form }: Product, jar?: string): string {
  if (wanted.name !== undefined) return wanted.name;
  const filled = inJars(jar);
  if (wanted.own !== undefined) return `${wanted.own.name}${filled}`;
  const trades = [...new Set(lots.map(({ trade }) => trade))];
  const foods = trades.length > 1 ? trades.join(' and ') : food.name;
  switch (row.makes) {
    case 'fruit in jars':
    case 'vegetables in jars':
    case 'tomatoes in jars':
    case 'meat in jars':
    case 'fish in jars':
    case 'puree': {
      // jars are called by what is in them, not by how it was cut
      const { title, apart } = saidOf(foods, inJar(wanted.form ?? row.form));
      return `${title}${apart && filled !== '' ? ',' : ''}${filled}`;
    }
    case 'dried':
    case 'frozen':
    case 'freeze-dried':
      return `${saidOf(foods, form).phrase}, ${row.makes}`;
    default:
      return row.foods.length > FEW || trades.length > 1 || !row.foods.includes(food.id)
        ? `${foods} ${row.makes}${filled}`
        : `${row.name}${filled}`;
  }
}
