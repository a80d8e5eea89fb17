import classesJson from '../../data/sugar/pectin-classes.json';
import contentJson from '../../data/sugar/pectin-content.json';
import { answer } from '../common/answer';
import { findNamed, lookUp, type Named, nameKey } from '../common/names';
import { fields, name, readInput } from '../quantity/fields';
import type { Basis, Caution } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { sugarCaution } from './cautions';

interface ClassRow extends Sourced, Named {
  readonly group: 1 | 2 | 3;
  readonly secondCopyOnly?: boolean;
}
interface ContentRow extends Sourced, Named {
  readonly dryMatter: number | null;
  readonly sugar: number | null;
  readonly acid: number | null;
  readonly pectin: number | null;
  readonly pectinRange?: readonly [low: number, high: number];
  readonly pH: number | null;
}
const classes = asTable<ClassRow>(classesJson).rows;
const contents = asTable<ContentRow>(contentJson).rows;

const NEEDS = {
  1: 'neither acid nor pectin, if it is not overripe',
  2: 'perhaps added acid or added pectin',
  3: 'always added acid, added pectin or both',
} as const;

const namesOf = (row: Named): string[] => [row.name, ...(row.synonyms ?? [])].map(nameKey);
/** The composition rows of a fruit, those with a pectin figure first. */
export function pectinRows(fruit: string): readonly ContentRow[] {
  const key = nameKey(fruit);
  const found = contents.filter((row) => namesOf(row).includes(key));
  return [...found.filter((row) => row.pectin !== null), ...found.filter((row) => row.pectin === null)];
}

const schema = fields({ fruit: name('a fruit, with its kind or ripeness where it matters: "sour apple"') });
/** Averages of the fresh edible part, g in 100 g; what the table has. */
export interface FruitComposition {
  /** As calcium pectate. */
  readonly pectin?: number;
  /** Citric, malic and tartaric acid together. */
  readonly acid?: number;
  readonly sugar?: number;
  readonly dryMatter?: number;
  readonly pH?: number;
}
export interface PectinClassInput {
  readonly fruit: string;
}
export interface PectinClass {
  readonly fruit: string;
  /** 1: enough pectin and acid of its own; 2: may lack one; 3: always lacks one or both. */
  readonly group: 1 | 2 | 3;
  readonly needs: (typeof NEEDS)[1 | 2 | 3];
  /** Where the name covers kinds of different groups: the others. The group answered is then the one that needs most. */
  readonly others: readonly { readonly fruit: string; readonly group: 1 | 2 | 3 }[];
  /** Average composition where it was analysed. */
  readonly composition: FruitComposition;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * What a fruit brings of its own pectin and acid, and so what a jelly of it needs besides sugar.
 *
 * A name that covers several kinds (apple: sour or ripe) is answered for the kind that needs most; the others are
 * listed. Sources: pectin and acid table of So Easy to Preserve (University of Georgia); composition Belitz et al.,
 * Food Chemistry, Table 18.3, grapefruit pectin Baker 1997.
 *
 * @param input - `fruit`: a name
 * @throws StillroomError UNKNOWN_NAME for a fruit in neither table
 *
 * @example
 * ```ts
 * import { pectinClass } from 'stillroom/sugar';
 *
 * pectinClass({ fruit: 'quinces' }).group; // => 1
 * pectinClass({ fruit: 'apple' }).group; // => 2
 * pectinClass({ fruit: 'peaches' }).needs; // => 'always added acid, added pectin or both'
 * ```
 */
export function pectinClass(input: PectinClassInput): PectinClass {
  const { fruit } = readInput(schema, input);
  const known = findNamed(fruit, classes);
  const rows = known.length > 0 ? known : [lookUp(fruit, classes, 'fruit', 'fruit of the pectin table')];
  const [row, ...others] = [...rows].sort((a, b) => b.group - a.group) as [ClassRow, ...ClassRow[]];
  const asked = pectinRows(fruit);
  const content = asked.length > 0 ? asked : pectinRows(row.name);
  return answer({
    fruit: row.name,
    group: row.group,
    needs: NEEDS[row.group],
    others: others.map((other) => ({ fruit: other.name, group: other.group })),
    composition: compositionOf(content),
    basis: [basisOf(row, 'group'), ...content.map((one) => basisOf(one, `composition of ${one.name}`))],
    cautions: [sugarCaution('overripe-sets-less')],
  });
}

/** What the rows of one fruit say together; where one is blank the next is asked. */
function compositionOf(rows: readonly ContentRow[]): FruitComposition {
  const known = [...rows]
    .reverse()
    .flatMap(({ pectin, acid, sugar, dryMatter, pH }) =>
      Object.entries({ pectin, acid, sugar, dryMatter, pH }).filter(([, value]) => value !== null),
    );
  return Object.fromEntries(known);
}

export interface PectinContentInput {
  readonly fruit: string;
}
export interface PectinContent extends FruitComposition {
  readonly fruit: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Average pectin, acid and sugar of a fresh fruit, g in 100 g of its edible part.
 *
 * Source: Belitz et al., Food Chemistry, Table 18.3 (pectin as calcium pectate; blank for citrus and pineapple);
 * grapefruit pulp Baker 1997. Averages: pectin falls as fruit ripens.
 *
 * @param input - `fruit`: a name
 * @throws StillroomError UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { pectinContent } from 'stillroom/sugar';
 *
 * pectinContent({ fruit: 'black currants' }).pectin; // => 1.7
 * ```
 */
export function pectinContent(input: PectinContentInput): PectinContent {
  const { fruit } = readInput(schema, input);
  const found = pectinRows(fruit);
  const rows = found.length > 0 ? found : [lookUp(fruit, contents, 'fruit', 'fruit of the composition table')];
  return answer({
    fruit: (rows[0] as ContentRow).name,
    ...compositionOf(rows),
    basis: rows.map((row) => basisOf(row, `composition of ${row.name}`)),
    cautions: [sugarCaution('overripe-sets-less')],
  });
}
