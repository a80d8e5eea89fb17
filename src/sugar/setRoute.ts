import chemistryJson from '../../data/sugar/gel-chemistry.json';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, number, optional, readInput, share } from '../quantity/fields';
import type { ShareInput } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { sugarCaution } from './cautions';
import { lawBasis, ORDINARY_SOLIDS } from './legalJam';
import { type PartsInput, partsField } from './parts';

interface GelRow extends Sourced {
  readonly pectin: 'high-methoxyl' | 'low-methoxyl' | 'preserves';
  readonly quantity: 'pH' | 'solids' | 'calcium' | 'addedPectin' | 'sag';
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}
const chemistry = asTable<GelRow>(chemistryJson).rows;
const gelRow = (pectin: GelRow['pectin'], quantity: GelRow['quantity']): GelRow | undefined =>
  chemistry.find((row) => row.pectin === pectin && row.quantity === quantity);

const routeSchema = fields({ finishSolids: share({ above: 0 }), sugarToFruit: optional(partsField()) });
export interface SetRouteInput {
  /** Soluble solids of the finished jam: 0 to 1 or percent. */
  readonly finishSolids: ShareInput;
  /** Sugar to fruit by weight; 0 is the no-sugar route. */
  readonly sugarToFruit?: PartsInput;
}
export interface SetRoute {
  readonly route: 'full sugar' | 'low sugar' | 'no sugar';
  /** The kind of pectin that sets at these solids. */
  readonly pectin: 'high-methoxyl' | 'low-methoxyl';
  /** True where neither the sugar sets it nor an ordinary jam's process fits it. */
  readonly ownProcess: boolean;
  readonly text: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * By what route a fruit spread sets: with sugar and acid, or, with little or no sugar, with a pectin and a process of
 * its own.
 *
 * Full sugar is from 60 % soluble solids (the least that the Codex standard and Directive 2001/113/EC call jam).
 * Ordinary (high-methoxyl) pectin sets from 55 to 80 % solids (recalled); below that only low-methoxyl pectin, with
 * calcium, 10 to 80 %.
 *
 * @param input - `finishSolids`: above 0 to 1 or percent; `sugarToFruit`: optional, 0 for no sugar
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { setRoute } from 'stillroom/sugar';
 *
 * setRoute({ finishSolids: '65 %' }).route; // => 'full sugar'
 * setRoute({ finishSolids: '35 %' }).pectin; // => 'low-methoxyl'
 * ```
 */
export function setRoute(input: SetRouteInput): SetRoute {
  const { finishSolids, sugarToFruit } = readInput(routeSchema, input);
  const ordinary = gelRow('high-methoxyl', 'solids') as GelRow;
  const route = sugarToFruit === 0 ? 'no sugar' : 100 * finishSolids >= ORDINARY_SOLIDS ? 'full sugar' : 'low sugar';
  const pectin = 100 * finishSolids >= ordinary.low ? 'high-methoxyl' : 'low-methoxyl';
  const ownProcess = route !== 'full sugar';
  const text = ownProcess
    ? `At ${Number((100 * finishSolids).toFixed(1))} % solids it is no ordinary jam: take a tested ${route} recipe with its own pectin and its own process, or freeze it.`
    : 'Sugar, acid and pectin set it, and it keeps as a jam does.';
  return answer({
    route,
    pectin,
    ownProcess,
    text,
    basis: [lawBasis('least solids of a jam'), basisOf(ordinary, 'solids at which ordinary pectin sets')],
    cautions: ownProcess ? [sugarCaution('own-process')] : [],
  });
}

const CONDITIONS = ['pH', 'solids', 'calcium', 'addedPectin', 'sag'] as const;
const conditionSchema = fields({
  pectin: choice('a kind of pectin', ['high-methoxyl', 'low-methoxyl'] as const),
  pH: optional(number('a pH from 0 to 14', { min: 0, max: 14 })),
  solids: optional(share()),
  calcium: optional(number('mg of calcium in a gram of pectin, 0 to 1,000', { min: 0, max: 1000 })),
  addedPectin: optional(share()),
  sag: optional(number('grade times mass fraction of pectin, 0 to 100', { min: 0, max: 100 })),
});
export interface GelConditionsInput {
  readonly pectin: 'high-methoxyl' | 'low-methoxyl';
  readonly pH?: number;
  /** Soluble solids of the finished jam. */
  readonly solids?: ShareInput;
  /** mg of calcium in a gram of low-methoxyl pectin. */
  readonly calcium?: number;
  /** Dry pectin in the mass of the jam. */
  readonly addedPectin?: ShareInput;
  /** Strength of the mix: grade times mass fraction of pectin. */
  readonly sag?: number;
}
export interface GelCondition {
  readonly quantity: (typeof CONDITIONS)[number];
  readonly value: number;
  /** The published range, in the unit named. */
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly verdict: 'within' | 'too low' | 'too high';
}
export interface GelConditions {
  readonly conditions: readonly GelCondition[];
  /** True where everything given is within its range. */
  readonly sets: boolean;
  readonly basis: readonly Basis[];
}

/**
 * Whether acid, solids, pectin and calcium are where a pectin gel needs them.
 *
 * Ranges: high-methoxyl pectin pH 2.8 to 3.5 and 55 to 80 % solids (recalled); preserves in general pH 3.0 to 3.3
 * (UNIDO 1985), 0.2 to 0.7 % added pectin and some 5 SAG (Practical Action); low-methoxyl pectin pH 2.5 to 6.5 and 10
 * to 80 % solids (lecture notes), 20 to 100 mg calcium a gram (recalled). Where a kind of pectin has no range of its
 * own, the general one is used; a strength of more than 5 SAG is no fault.
 *
 * @param input - `pectin`: `high-methoxyl` or `low-methoxyl`; any of `pH`, `solids`, `calcium`, `addedPectin`, `sag`
 * @throws StillroomError MISSING with none of them; OUT_OF_RANGE; CONTRADICTION for calcium with high-methoxyl pectin, which does not need it
 *
 * @example
 * ```ts
 * import { gelConditions } from 'stillroom/sugar';
 *
 * gelConditions({ pectin: 'high-methoxyl', pH: 3.9, solids: '65 %' }).sets; // => false
 * ```
 */
export function gelConditions(input: GelConditionsInput): GelConditions {
  const given = readInput(conditionSchema, input);
  const found = CONDITIONS.flatMap((quantity) => {
    const raw = given[quantity];
    return raw === undefined ? [] : [judge(quantity, raw, given.pectin)];
  });
  if (found.length === 0) fail('MISSING', '', input, `at least one of ${CONDITIONS.join(', ')} to judge`);
  return answer({
    conditions: found.map(({ condition }) => condition),
    sets: found.every(({ condition }) => condition.verdict === 'within'),
    basis: found.map(({ row }) => basisOf(row, `range of ${row.quantity}`)),
  });
}

function judge(quantity: GelRow['quantity'], raw: number, pectin: GelRow['pectin']) {
  const row = gelRow(pectin, quantity) ?? gelRow('preserves', quantity);
  if (row === undefined) {
    fail('CONTRADICTION', quantity, raw, 'nothing: only low-methoxyl pectin needs it');
  }
  const value = row.unit.startsWith('percent') ? 100 * raw : raw;
  const { low, high, unit } = row;
  const over = quantity === 'sag' ? false : value > high * (1 + 1e-12);
  const verdict = value < low * (1 - 1e-12) ? 'too low' : over ? 'too high' : 'within';
  return { row, condition: { quantity, value, low, high, unit, verdict } as const };
}
