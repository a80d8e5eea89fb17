import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { type FoundFood, food as foodField } from '../foods/fields';
import { nameOf } from '../foods/tables';
import { choice, fields, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { mass } from '../words/mass';
import { ready as readyWord } from '../words/ready';
import { otherShare } from '../words/shares';
import { sugarCaution } from './cautions';
import { oneOf } from './inputs';
import { factorOf, foodsWithFactor, type LawRow, PRODUCTS, rulesFor } from './jamLaw';

const schema = fields({
  /** The name that the batch is to carry: `jam`, `jelly`, `marmalade`, `fruit butter` ... */
  spread: choice('the name the batch is to carry', PRODUCTS),
  /** The fruit. */
  food: foodField(),
  /** The fruit by mass, ready for the pot; its juice for a jelly; or */
  ready: optional(readyWord()),
  /** the soluble solids that the fruit brought, by mass: the US standard then counts the fruit by its factor. */
  fruitSolids: optional(mass()),
  /** Sugar and other nutritive sweetener, as dry sugar; may be 0. */
  sugar: mass({ min: { value: 0, unit: 'kg' } }),
  /** The finished product, for the rules that count fruit in a kilogram of it. */
  jam: optional(mass()),
  /** Soluble solids of the finished product: 0 to 1, or percent. */
  finishSolids: otherShare('finishSolids', 'Soluble solids of the finished jam.'),
});
export type LegalJamInput = z.input<typeof schema>;

/** One figure of a batch against one limit of one rule. */
export interface LegalCheck {
  /** Where the rule holds. */
  readonly place: string;
  /** Its title. */
  readonly title: string;
  /** What is checked. */
  readonly quantity: 'fruit to sweetener' | 'soluble solids' | 'fruit content';
  /** `parts of fruit for 1 of sweetener`, or `share` of the finished product. */
  readonly unit: string;
  /** The least that the rule allows, where it says one. */
  readonly least?: number;
  /** The most that the rule allows, where it says one. */
  readonly most?: number;
  /** The figure of the batch. */
  readonly actual: number;
  /** How far the actual figure is inside the limit; negative where it fails. */
  readonly margin: number;
  /** Whether the limit is met. */
  readonly meets: boolean;
  /** Whether the rule was recalled and not seen in a copy. */
  readonly recalled: boolean;
}
export interface LegalJam {
  /** The fruit that was counted. */
  readonly ready: Quantity<'mass'>;
  /** With `fruitSolids`: the factor by which the fruit was counted. */
  readonly factor?: number;
  /** Every limit that was checked. */
  readonly checks: readonly LegalCheck[];
  /** By place: true where every rule checked is met. */
  readonly meetsIn: Readonly<Record<string, boolean>>;
  /** Where the rules come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

interface Counted {
  readonly ready: Quantity<'mass'>;
  readonly factor?: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The fruit by mass: as given, or by the soluble solids that it brought. */
function countFruit(food: FoundFood, ready: Quantity<'mass'> | undefined, solids: Quantity<'mass'> | undefined) {
  if (ready !== undefined) return { ready, basis: [], cautions: [] };
  const row = factorOf(food.id);
  if (row === undefined || solids === undefined) return undefined;
  const counted: Counted = {
    ready: { value: solids.value * row.factor, unit: solids.unit },
    factor: row.factor,
    basis: [{ ...basisOf(row, 'factor'), ...(row.food === food.id ? {} : { food: nameOf(row.food) }) }],
    // the factors were read, their use recalled
    cautions: [caution('recalled')],
  };
  return counted;
}

const noFactor = (food: string): NotKnown =>
  notKnown({
    code: 'no-factor',
    text: `These tables hold no factor to count the fruit of its soluble solids for ${food}.`,
    instead: [
      { text: 'Weigh the fruit and give it as `ready`.' },
      ...foodsWithFactor().map((id) => ({ text: `A factor is held for ${nameOf(id)}.`, food: nameOf(id) })),
    ],
    basis: [derived('reason', 'what the table of factors holds')],
    cautions: [sugarCaution('law-may-differ')],
  });

/**
 * Whether a batch may carry the name jam, jelly or preserves: fruit to sweetener, soluble solids and fruit content
 * against the published rules, each with its margin.
 *
 * Rules: 21 CFR 150.110, 150.140, 150.141 and 150.160 (parts of fruit to parts of sweetener, soluble solids), FDA's
 * label guidance for marmalade, Codex CXS 296-2009 (recalled), Council Directive 2001/113/EC and its 2024 amendment
 * (the amendment recalled), the UK's 2003 regulations, Australia and New Zealand Standard 2.3.2. A rule on fruit
 * content is checked only where the mass of the finished jam is given.
 *
 * With `fruitSolids` the fruit is counted as the US standard of fruit butter does: soluble solids x factor of 21 CFR
 * 150.110(b)(1). The factors were read, their use recalled.
 *
 * @param input - `spread`; `food`; `ready` or `fruitSolids`; `sugar`, which may be 0; `jam`; `finishSolids`: 0 to 1
 * or percent
 * @returns `checks` and `meetsIn`; or `known: false` where `fruitSolids` is given for a fruit without a factor
 * @throws StillroomError UNKNOWN_NAME for another name; MISSING, CONTRADICTION
 *
 * @example
 * ```ts
 * import { legalJam } from 'stillroom/sugar';
 *
 * const batch = { ready: '45 kg', sugar: '55 kg', finishSolids: '65 %', jam: '91.54 kg' } as const;
 * const peach = legalJam({ spread: 'jam', food: 'peach', ...batch });
 * 'meetsIn' in peach && peach.meetsIn.US; // => true
 * const strawberry = legalJam({ spread: 'jam', food: 'strawberry', ...batch });
 * 'meetsIn' in strawberry && strawberry.meetsIn.US; // => false
 * ```
 */
export function legalJam(input: LegalJamInput): LegalJam | NotKnown {
  const given = readInput(schema, input);
  oneOf(given, ['ready', 'fruitSolids']);
  const counted = countFruit(given.food, given.ready, given.fruitSolids);
  if (counted === undefined) return answer(noFactor(given.food.name));
  const batch = {
    fruit: valueIn(counted.ready, 'g'),
    sugar: valueIn(given.sugar, 'g'),
    jam: given.jam === undefined ? undefined : valueIn(given.jam, 'g'),
    solids: given.finishSolids,
  };
  const rows = rulesFor(given.spread, given.food.id);
  const checks = rows.flatMap((row) => checksOf(row, batch));
  const meetsIn: Record<string, boolean> = {};
  for (const { place, meets } of checks) meetsIn[place] = (meetsIn[place] ?? true) && meets;
  const { basis, cautions, ...fruit } = counted;
  return answer({
    ...fruit,
    checks,
    meetsIn,
    basis: [
      ...basis,
      ...rows.map((row) => basisOf(row, 'checks', row.rule)),
      derived('meetsIn', 'every check of the place'),
    ],
    cautions: [
      ...cautions,
      sugarCaution('law-may-differ'),
      caution('follow-local-guidance'),
      ...(checks.some(({ recalled }) => recalled) ? [caution('recalled')] : []),
    ],
  });
}

/** Limits are met to the last digits of doubles. */
const NOISE = 1e-9;

interface Batch {
  readonly fruit: number;
  readonly sugar: number;
  readonly jam: number | undefined;
  readonly solids: number;
}

function checksOf(row: LawRow, { fruit, sugar, jam, solids }: Batch): LegalCheck[] {
  const { place, rule } = row;
  const recalled = row.obtained === 'memory';
  const checks: LegalCheck[] = [];
  const atLeast = (quantity: LegalCheck['quantity'], unit: string, least: number, actual: number): void => {
    const margin = actual - least;
    checks.push({
      place,
      title: rule,
      quantity,
      unit,
      least,
      actual,
      margin,
      meets: margin >= -NOISE * least,
      recalled,
    });
  };
  if (row.fruitParts !== undefined && row.sweetenerParts !== undefined && sugar > 0) {
    const unit = 'parts of fruit for 1 of sweetener';
    atLeast('fruit to sweetener', unit, row.fruitParts / row.sweetenerParts, fruit / sugar);
  }
  if (row.solidsLeast !== undefined) atLeast('soluble solids', 'share', row.solidsLeast / 100, solids);
  if (row.solidsMost !== undefined) {
    const most = row.solidsMost / 100;
    const margin = most - solids;
    const meets = margin >= -NOISE * most;
    checks.push({
      place,
      title: rule,
      quantity: 'soluble solids',
      unit: 'share',
      most,
      actual: solids,
      margin,
      meets,
      recalled,
    });
  }
  if (row.fruitLeast !== undefined && jam !== undefined) {
    atLeast('fruit content', 'share', row.fruitLeast / 1000, fruit / jam);
  }
  return checks;
}
