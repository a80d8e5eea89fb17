import { saidOf } from '../../foods/phrases';
import { readJar } from '../../words/jar';
import type { Wanted } from '../request/planInput';

/** What several jars of a size are called: `pints`. */
const jarsCalled = (jar: string): string => readJar(jar).size?.plural ?? `${jar} jars`;

/** What a product is called: `plums, whole, in pints`, `apple slices, dried`. */
export function nameOf({ name, make, from, form, jar }: Wanted, trade = from): string {
  if (name !== undefined) return name;
  const inJars = jar === undefined ? '' : ` in ${jarsCalled(jar)}`;
  switch (make) {
    case 'jars': {
      const { title, apart } = saidOf(trade, form);
      return `${title}${apart && inJars !== '' ? ',' : ''}${inJars}`;
    }
    case 'dried':
    case 'frozen':
    case 'freeze-dried':
      return `${saidOf(trade, form ?? 'slices').phrase}, ${make}`;
    default:
      return `${trade} ${make}${inJars}`;
  }
}
