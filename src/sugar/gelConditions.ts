import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, number, optional, readInput } from '../quantity/fields';
import { type Basis, type Caution, derived } from '../sources/basis';
import { basisOf } from '../sources/table';
import { pH as pHWord } from '../words/pH';
import { otherShare } from '../words/shares';
import { type GelRow, gelRange, QUANTITIES, routeOf, type SetRoute } from './gelRoute';
import { partsField } from './parts';

const PECTINS = ['high-methoxyl', 'low-methoxyl'] as const;
const schema = fields({
  /** Soluble solids of the finished jam: above 0 to 1, or percent. */
  finishSolids: optional(otherShare('finishSolids', 'Soluble solids of the finished jam.', { above: 0 })),
  /** Sugar to fruit by weight, 0 to 10; 0 is the route without sugar. */
  sugarToFruit: optional(partsField()),
  /** The pectin; the kind that sets at these solids when left out. */
  pectinKind: optional(choice('a kind of pectin', PECTINS)),
  /** pH of the jam, 0 to 14. */
  pH: optional(pHWord()),
  /** mg of calcium in a gram of low-methoxyl pectin, 0 to 1,000. */
  calcium: optional(number('mg of calcium in a gram of pectin, 0 to 1,000', { min: 0, max: 1000 })),
  /** Dry pectin as a share of the jam: 0 to 1, or percent. */
  addedPectin: optional(otherShare('addedPectin', 'Dry pectin, as a share of the mass of the jam.')),
  /** Strength of the mix in SAG, 0 to 100: grade of the pectin times its share (see `pectinNeeded`). */
  sag: optional(number('grade times mass fraction of pectin, 0 to 100', { min: 0, max: 100 })),
});
export type GelConditionsInput = z.input<typeof schema>;

/** One condition of a gel against its published range. */
export interface GelCondition {
  /** What is judged. */
  readonly quantity: (typeof QUANTITIES)[number];
  /** What you gave; shares from 0 to 1. */
  readonly value: number;
  /** The low end of the published range, in the same unit. */
  readonly low: number;
  /** The high end of the published range. */
  readonly high: number;
  /** The unit of the three. */
  readonly unit: string;
  /** Where the value lies. */
  readonly verdict: 'within' | 'too low' | 'too high';
}
export interface GelConditions {
  /** The route by which it sets, where `finishSolids` is given. */
  readonly route?: SetRoute['route'];
  /** The kind of pectin that was judged by. */
  readonly pectinKind: (typeof PECTINS)[number];
  /** With `route`: true where sugar does not set it and an ordinary jam's process does not fit it. */
  readonly ownProcess?: boolean;
  /** With `route`: the same in words. */
  readonly text?: string;
  /** Each condition that was given, against its range. */
  readonly conditions: readonly GelCondition[];
  /** True where every condition that was given is within its range. */
  readonly sets: boolean;
  /** Where the ranges come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * By what route a fruit spread sets, and whether acid, solids, pectin and calcium are where a gel needs them.
 *
 * Full sugar is from 60 % soluble solids (the least that the Codex standard and Directive 2001/113/EC call jam).
 * Ordinary (high-methoxyl) pectin sets from 55 to 80 % solids (recalled); below that only low-methoxyl pectin, with
 * calcium, 10 to 80 %. With little or no sugar a spread needs a pectin and a process made for it.
 *
 * Other ranges: high-methoxyl pectin pH 2.8 to 3.5; preserves in general pH 3.0 to 3.3 (UNIDO 1985), 0.2 to 0.7 %
 * added pectin and some 5 SAG (Practical Action); low-methoxyl pectin pH 2.5 to 6.5 (lecture notes), 20 to 100 mg
 * calcium a gram (recalled). Where a kind of pectin has no range, the general one is used; a strength of more than 5
 * SAG is no fault.
 *
 * @param input - any of `finishSolids`, `pH`, `calcium`, `addedPectin`, `sag`; `sugarToFruit` and `pectinKind`
 * (`high-methoxyl` or `low-methoxyl`) where known; without `finishSolids` the pectin must be named
 * @throws StillroomError MISSING with no condition; OUT_OF_RANGE; CONTRADICTION for calcium with high-methoxyl
 * pectin, which does not need it
 *
 * @example
 * ```ts
 * import { gelConditions } from 'stillroom/sugar';
 *
 * gelConditions({ finishSolids: '65 %' }).route; // => 'full sugar'
 * gelConditions({ finishSolids: '35 %' }).pectinKind; // => 'low-methoxyl'
 * gelConditions({ pectinKind: 'high-methoxyl', pH: 3.9, finishSolids: '65 %' }).sets; // => false
 * ```
 */
export function gelConditions(input: GelConditionsInput): GelConditions {
  const given = readInput(schema, input);
  const { finishSolids, sugarToFruit } = given;
  const route = finishSolids === undefined ? undefined : routeOf(finishSolids, sugarToFruit);
  if (QUANTITIES.every((quantity) => given[quantity] === undefined)) {
    fail('MISSING', '', input, `at least one of ${QUANTITIES.join(', ')} to judge`);
  }
  const pectin = given.pectinKind ?? route?.pectinKind;
  if (pectin === undefined) return fail('MISSING', 'pectinKind', undefined, `a kind of pectin: ${PECTINS.join(', ')}`);
  const found = QUANTITIES.flatMap((quantity) => {
    const raw = given[quantity];
    return raw === undefined ? [] : [judge(quantity, raw, pectin)];
  });
  return answer({
    ...(route === undefined ? {} : { route: route.route, ownProcess: route.ownProcess, text: route.text }),
    pectinKind: pectin,
    conditions: found.map(({ condition }) => condition),
    sets: found.every(({ condition }) => condition.verdict === 'within'),
    basis: [
      ...(route?.basis ?? []),
      ...(given.pectinKind === undefined ? [] : [derived('pectinKind', 'the kind you named')]),
      ...found.map(({ row }) => basisOf(row, 'conditions[].low', `range of ${row.quantity}`)),
    ],
    cautions: route?.cautions ?? [],
  });
}

function judge(quantity: GelRow['quantity'], value: number, pectin: GelRow['pectin']) {
  const row = gelRange(pectin, quantity) ?? gelRange('preserves', quantity);
  if (row === undefined) {
    fail('CONTRADICTION', quantity, value, 'nothing: only low-methoxyl pectin needs it');
  }
  const scale = row.percent === true ? 100 : 1;
  const low = Number((row.low / scale).toPrecision(12));
  const high = Number((row.high / scale).toPrecision(12));
  const unit = row.percent === true ? 'share by weight' : row.unit;
  const over = quantity === 'sag' ? false : value > high * (1 + 1e-12);
  const verdict = value < low * (1 - 1e-12) ? 'too low' : over ? 'too high' : 'within';
  return { row, condition: { quantity, value, low, high, unit, verdict } as const };
}
