import lawJson from '../../data/sugar/composition-law.json';
import factorsJson from '../../data/sugar/fruit-factors.json';
import fruitJson from '../../data/sugar/us-jam-fruit.json';
import { answer } from '../common/answer';
import { findNamed, lookUp, type Named } from '../common/names';
import { choice, fields, mass, name, optional, readInput, share } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { MassInput, Quantity, ShareInput } from '../quantity/types';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { sugarCaution } from './cautions';
import { massBalance } from './inputs';

const PRODUCTS = [
  'jam',
  'jelly',
  'extra jam',
  'marmalade',
  'fruit butter',
  'artificially sweetened jelly',
  'chestnut puree',
  'reduced-sugar jam',
  'fruit curd',
  'mincemeat',
] as const;
/** The products that the rules know. */
export type JamProduct = (typeof PRODUCTS)[number];

interface LawRow extends Sourced {
  readonly rule: string;
  readonly place: string;
  readonly products: readonly JamProduct[];
  readonly fruits: 'any' | 'other' | 'group 1' | 'group 2' | readonly string[];
  readonly fruitParts?: number;
  readonly sweetenerParts?: number;
  readonly solidsLeast?: number;
  readonly solidsMost?: number;
  readonly fruitLeast?: number;
}
interface UsFruitRow extends Sourced, Named {
  readonly group: 1 | 2;
}
interface FactorRow extends Sourced, Named {
  readonly factor: number;
}
const laws = asTable<LawRow>(lawJson).rows;
const usFruit = asTable<UsFruitRow>(fruitJson).rows;
const factors = asTable<FactorRow>(factorsJson).rows;

const leastJam = laws.find((row) => row.place === 'EU' && row.solidsLeast !== undefined) as LawRow;
/** The least soluble solids of an ordinary jam, percent. */
export const ORDINARY_SOLIDS = leastJam.solidsLeast as number;
export const lawBasis = (what: string): Basis => basisOf(leastJam, what);

const same = (one: string, other: string): boolean => findNamed(one, [{ name: other }]).length > 0;

/** Whether a rule is about this fruit. "Other" fruits are those that no rule of the same place and product names. */
function applies(row: LawRow, product: JamProduct, fruit: string): boolean {
  if (!row.products.includes(product)) return false;
  if (row.fruits === 'any') return true;
  if (row.fruits === 'other') {
    return !laws.some((one) => {
      const special = row.place.startsWith(one.place) && one.products.includes(product) && Array.isArray(one.fruits);
      return special && (one.fruits as readonly string[]).some((name) => same(name, fruit));
    });
  }
  if (typeof row.fruits === 'string') {
    return findNamed(fruit, usFruit).some(({ group }) => row.fruits === `group ${group}`);
  }
  return row.fruits.some((name) => same(name, fruit));
}

const schema = fields({
  product: choice('a product', PRODUCTS),
  fruitName: name('a fruit'),
  fruit: mass(),
  sugar: mass({ min: { value: 0, unit: 'kg' } }),
  jam: optional(mass()),
  finishSolids: share(),
});
export interface LegalJamInput {
  readonly product: JamProduct;
  readonly fruitName: string;
  /** Prepared fruit, or its juice for a jelly. */
  readonly fruit: MassInput;
  /** Sugar and other nutritive sweetener, as dry sugar. */
  readonly sugar: MassInput;
  /** The finished product, for the rules that count fruit in a kilogram of it. */
  readonly jam?: MassInput;
  readonly finishSolids: ShareInput;
}
export interface LegalCheck {
  readonly place: string;
  readonly rule: string;
  readonly quantity: 'fruit to sweetener' | 'soluble solids' | 'fruit content';
  /** `parts of fruit for 1 of sweetener`, `percent`, `g in 1 kg`. */
  readonly unit: string;
  readonly least?: number;
  readonly most?: number;
  readonly actual: number;
  /** How far the actual figure is inside the limit; negative where it fails. */
  readonly margin: number;
  readonly meets: boolean;
  readonly fromMemory: boolean;
}
export interface LegalJam {
  readonly checks: readonly LegalCheck[];
  /** By place: true where every rule checked is met. */
  readonly meets: Readonly<Record<string, boolean>>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Whether a batch may carry the name: fruit to sweetener, soluble solids and fruit content against the published
 * rules, each with its margin.
 *
 * Rules: 21 CFR 150.110, 150.140, 150.141 and 150.160 (parts of fruit to parts of sweetener, soluble solids), FDA's
 * label guidance for marmalade, Codex CXS 296-2009 (recalled), Council Directive 2001/113/EC and its 2024 amendment
 * (the amendment recalled), the UK's 2003 regulations, Australia and New Zealand Standard 2.3.2. A rule on fruit
 * content is checked only where the mass of the finished jam is given.
 *
 * @param input - see the fields; `finishSolids`: 0 to 1 or percent; `sugar` may be 0
 * @throws StillroomError UNKNOWN_NAME for another product
 *
 * @example
 * ```ts
 * import { legalJam } from 'stillroom/sugar';
 *
 * const batch = { fruit: '45 kg', sugar: '55 kg', finishSolids: '65 %', jam: '91.54 kg' } as const;
 * legalJam({ product: 'jam', fruitName: 'peach', ...batch }).meets.US; // => true
 * legalJam({ product: 'jam', fruitName: 'strawberry', ...batch }).meets.US; // => false
 * ```
 */
export function legalJam(input: LegalJamInput): LegalJam {
  const given = readInput(schema, input);
  const fruit = valueIn(given.fruit, 'g');
  const sugar = valueIn(given.sugar, 'g');
  const jam = given.jam === undefined ? undefined : valueIn(given.jam, 'g');
  const rows = laws.filter((row) => applies(row, given.product, given.fruitName));
  const checks = rows.flatMap((row) => checksOf(row, fruit, sugar, given.finishSolids, jam));
  const meets: Record<string, boolean> = {};
  for (const check of checks) meets[check.place] = (meets[check.place] ?? true) && check.meets;
  return answer({
    checks,
    meets,
    basis: rows.map((row) => basisOf(row, row.rule)),
    cautions: [
      sugarCaution('law-may-differ'),
      caution('follow-local-guidance'),
      ...(checks.some(({ fromMemory }) => fromMemory) ? [caution('recalled')] : []),
    ],
  });
}

/** Limits are met to the last digits of doubles. */
const NOISE = 1e-9;

function checksOf(row: LawRow, fruit: number, sugar: number, solids: number, jam: number | undefined): LegalCheck[] {
  const { place, rule } = row;
  const fromMemory = row.obtained === 'memory';
  const atLeast = (quantity: LegalCheck['quantity'], unit: string, least: number, actual: number): LegalCheck => {
    const margin = actual - least;
    return { place, rule, quantity, unit, least, actual, margin, meets: margin >= -NOISE * least, fromMemory };
  };
  const checks: LegalCheck[] = [];
  if (row.fruitParts !== undefined && row.sweetenerParts !== undefined && sugar > 0) {
    const unit = 'parts of fruit for 1 of sweetener';
    checks.push(atLeast('fruit to sweetener', unit, row.fruitParts / row.sweetenerParts, fruit / sugar));
  }
  if (row.solidsLeast !== undefined) checks.push(atLeast('soluble solids', 'percent', row.solidsLeast, 100 * solids));
  if (row.solidsMost !== undefined) {
    const most = row.solidsMost;
    const margin = most - 100 * solids;
    const meets = margin >= -NOISE * most;
    checks.push({
      place,
      rule,
      quantity: 'soluble solids',
      unit: 'percent',
      most,
      actual: 100 * solids,
      margin,
      meets,
      fromMemory,
    });
  }
  if (row.fruitLeast !== undefined && jam !== undefined) {
    checks.push(atLeast('fruit content', 'g in 1 kg', row.fruitLeast, (1000 * fruit) / jam));
  }
  return checks;
}

const weightSchema = fields({ fruitName: name('a fruit'), solubleSolids: mass() });
export interface LegalFruitWeightInput {
  /** Apple, apricot, grape, peach, pear, plum, prune or quince. */
  readonly fruitName: string;
  /** Mass of the soluble solids that the fruit brought. */
  readonly solubleSolids: MassInput;
}
export interface LegalFruitWeight {
  readonly fruit: Quantity<'mass'>;
  readonly factor: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The weight of fruit that the US standard of fruit butter counts for a measured weight of its soluble solids.
 *
 * Formula: fruit = soluble solids x factor of 21 CFR 150.110(b)(1). The factors were read, their use recalled.
 *
 * @param input - `fruitName`; `solubleSolids`: a mass
 * @throws StillroomError UNKNOWN_NAME for a fruit without a factor
 *
 * @example
 * ```ts
 * import { legalFruitWeight } from 'stillroom/sugar';
 *
 * legalFruitWeight({ fruitName: 'peach', solubleSolids: '2 kg' }).fruit; // => { value: 17, unit: 'kg' }
 * ```
 */
export function legalFruitWeight(input: LegalFruitWeightInput): LegalFruitWeight {
  const given = readInput(weightSchema, input);
  const row = lookUp(given.fruitName, factors, 'fruitName', 'fruit with a factor');
  return answer({
    fruit: { value: given.solubleSolids.value * row.factor, unit: given.solubleSolids.unit },
    factor: row.factor,
    basis: joinBasis([basisOf(row, 'factor')], [massBalance('weight of fruit')]),
    cautions: [sugarCaution('law-may-differ'), caution('recalled')],
  });
}
