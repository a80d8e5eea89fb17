import * as z from 'zod/mini';
import table from '../../data/process/elevation-minutes.json';
import { answer } from '../common/answer';
import { exact } from '../common/exact';
import { fail } from '../errors/StillroomError';
import { choice, fields, kitchenElevation, number, readInput, reading } from '../quantity/fields';
import { formatQuantity } from '../quantity/formatQuantity';
import { exactIn } from '../quantity/scale';
import type { LengthInput, Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { id, positive, type RowOf, sourcedColumns } from '../sources/columns';
import type { NotTested } from '../sources/no';
import { asTable, basisOf } from '../sources/table';
import { bandIndex, bandText } from './bands';
import { processCaution, usualCautions } from './cautions';
import { keepings, refusal } from './refusal';

const RULES = ['bands', 'per-1000-ft', 'sterilizing', 'ten-percent'] as const;
/** Published general rules that add minutes for elevation. */
export type ElevationRule = (typeof RULES)[number];

/** A row of the general rules. */
export const elevationRuleRow = () =>
  z.strictObject({
    id: id(),
    /** `bands`, `per-1000-ft`, `sterilizing` or `ten-percent`. */
    rule: z.enum([...RULES, 'before-tasting']),
    upToFt: z.exactOptional(positive()),
    add: z.exactOptional(z.number()),
    addOver20: z.exactOptional(z.number()),
    base: z.exactOptional(positive()),
    percent: z.exactOptional(positive()),
    stepFt: z.exactOptional(positive()),
    fromFt: z.exactOptional(positive()),
    ...sourcedColumns(),
  });
export type ElevationRuleRow = RowOf<typeof elevationRuleRow>;
const rows = asTable<ElevationRuleRow>(table).rows;
export const elevationRuleRows = (rule: ElevationRuleRow['rule']) => rows.filter((row) => row.rule === rule);

const LONGEST_CITATION = 300;
/** Base times over this many minutes take the larger addition of the per-1000-ft rule. */
const LONGER = 20;

const CITATION =
  'where the tested time is published: its title and a year, edition, bulletin number or page, or a title of three words or more';
/** A citation that can be followed up: three words of three letters or more, or two and a number. */
export const citationField = () =>
  reading<string, string>((given) => {
    if (given === undefined) fail('MISSING', '', given, CITATION);
    if (typeof given !== 'string') fail('WRONG_TYPE', '', given, CITATION);
    const text = given.trim();
    const words = new Set(
      text
        .slice(0, LONGEST_CITATION)
        .toLowerCase()
        .match(/\p{L}{3,}/gu) ?? [],
    );
    if (text.length > LONGEST_CITATION || words.size < (/\d/.test(text) ? 2 : 3))
      fail('UNKNOWN_NAME', '', given, CITATION);
    return text;
  });

const schema = /* @__PURE__ */ fields({
  /** The tested minutes as printed for the lowest elevations, above 0 and up to 600. */
  baseMinutes: number('the tested minutes at the lowest elevations, above 0 and up to 600', { above: 0, max: 600 }),
  /** The rule that the source of the tested time goes by. */
  rule: choice('the rule of the source', RULES),
  /** Elevation of the kitchen, above -500 m, to 5,000 m. */
  elevation: kitchenElevation(),
  /** Where the tested time is published. */
  citation: citationField(),
});

export interface ElevationMinutesInput {
  /** The tested minutes as printed for the lowest elevations. */
  readonly baseMinutes: number;
  /** The rule that the source of the tested time goes by. */
  readonly rule: ElevationRule;
  /** Elevation of the kitchen, above -500 m, to 5,000 m. */
  readonly elevation: LengthInput;
  /** Where the tested time is published: two words of its title and a year, edition, number or page; or three words. */
  readonly citation: string;
}
export interface ElevationMinutes {
  /** The time at the elevation, minutes. */
  readonly minutes: number;
  /** The minutes added for elevation. */
  readonly added: number;
  /** The minutes by `bands`, where they are more than these: use the longer time. */
  readonly byBands?: number;
  /** Where each figure comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** One minute for each 1,000 ft from 1,000 ft on, any part of a thousand counted whole; none below. */
export function perThousandFeet(elevation: Quantity<'length'>, row: { add?: number; stepFt?: number }): number {
  const { add = 1, stepFt = 1000 } = row;
  const feet = exactIn(elevation, 'ft');
  return feet.lt(stepFt) ? 0 : feet.div(stepFt).toPlaces(0, 'up').times(add).toNumber();
}

/**
 * The minutes at your elevation for a tested boiling-water time that you bring with its citation, by one of the
 * published general rules. Use it for a time that is printed without elevations; a product's own printed times
 * (`testedProcess`) always come first, because the tables do not all add the same minutes.
 *
 * - `bands`: 5, 10, 15 and 20 minutes more above 1,000, 3,000, 6,000 and 8,000 ft; never less than any printed
 *   table adds; ends at 10,000 ft. The first three are what the printed tables add at most; the last adds 5 minutes
 *   more than they do, on the safe side.
 * - `per-1000-ft`, older: 1 minute per 1,000 ft for a base of 20 minutes or less, 2 for a longer one; any part of a
 *   thousand above 1,000 ft counts whole; ends at 10,000 ft.
 * - `sterilizing`: 1 minute per 1,000 ft from 1,000 ft on, for sterilizing empty jars; ends at 10,000 ft, where the
 *   bands end.
 * - `ten-percent`, of the 1910s to 1940s: recognized, and refused.
 *
 * The result is rounded up to whole minutes. A rule that gives fewer minutes than `bands` says so: `byBands` holds the
 * longer time, with the caution `fewer-than-bands`.
 *
 * Source: `bands` the boiling-water tables of the USDA Complete Guide to Home Canning; `per-1000-ft` an older federal
 * bulletin, recalled and not seen; `sterilizing` Michigan State 01600946; `ten-percent` recalled.
 *
 * edition, bulletin or page), or three such words
 * @returns the minutes, or a refusal where the rule's table ends
 * @throws StillroomError MISSING, OUT_OF_RANGE, UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { elevationMinutes } from 'stillroom/process';
 *
 * const brought = { baseMinutes: 15, citation: 'extension bulletin 12, page 3' };
 * const answer = elevationMinutes({ ...brought, rule: 'bands', elevation: '4500 ft' });
 * 'minutes' in answer && answer.minutes; // => 25
 * 'minutes' in elevationMinutes({ ...brought, rule: 'bands', elevation: '11000 ft' }); // => false
 * ```
 */
export function elevationMinutes(input: ElevationMinutesInput): ElevationMinutes | NotTested {
  const asked = readInput(schema, input);
  const { baseMinutes, rule, citation } = asked;
  const own: Basis = { of: 'minutes', kind: 'measured', locator: citation, note: 'time before the addition' };
  const [first] = elevationRuleRows(rule) as [ElevationRuleRow, ...ElevationRuleRow[]];
  if (rule === 'ten-percent') {
    return answer(
      refusal(
        {
          code: 'rule not tested',
          text: 'the rule of 10 percent more for each 500 ft belongs to recipes of the 1910s to 1940s, whose times were not tested',
          basis: [{ ...own, of: 'reason' }, basisOf(first, 'reason', 'the old rule')],
        },
        'look for a tested process of the product (testedProcess), or bring a tested time with its own rule',
      ),
    );
  }
  const bands = added('bands', asked);
  const found = rule === 'bands' ? bands : added(rule, asked);
  if (found === undefined || bands === undefined) {
    const ends = elevationRuleRows('bands').map((row) => row.upToFt as number);
    return answer(
      refusal(
        {
          code: 'too high',
          text: `the rule's table ends at ${formatQuantity({ value: Math.max(...ends), unit: 'ft' })}`,
          basis: [{ ...own, of: 'reason' }, basisOf(first, 'reason', 'the rule')],
        },
        [{ text: 'use a process printed for that elevation' }, ...keepings()],
      ),
    );
  }
  const minutes = (more: number) => exact(baseMinutes).plus(more).toPlaces(0, 'up').toNumber();
  const short = found.minutes < bands.minutes;
  const cautions = ['user-time', RULE_CAUTIONS[rule], ...(short ? ['fewer-than-bands'] : [])];
  return answer({
    minutes: minutes(found.minutes),
    added: found.minutes,
    ...(short ? { byBands: minutes(bands.minutes) } : {}),
    basis: [own, found.basis, ...(short ? [{ ...bands.basis, of: 'byBands' }] : [])],
    cautions: [
      ...(found.basis.kind === 'recalled' ? [caution('recalled')] : []),
      ...cautions.map(processCaution),
      ...usualCautions(),
    ],
  });
}

/** The caution that belongs to each rule. */
const RULE_CAUTIONS = {
  bands: 'general-bands',
  'per-1000-ft': 'superseded-rule',
  sterilizing: 'sterilizing-rule',
} as const;

/** What a rule adds at a place; undefined above the end of its table. */
function added(
  rule: keyof typeof RULE_CAUTIONS,
  { baseMinutes, elevation }: { baseMinutes: number; elevation: Quantity<'length'> },
): { readonly minutes: number; readonly basis: Basis } | undefined {
  const chosen = elevationRuleRows(rule);
  const [first] = chosen as [ElevationRuleRow, ...ElevationRuleRow[]];
  if (rule === 'sterilizing') {
    return { minutes: perThousandFeet(elevation, first), basis: basisOf(first, 'added', '1 minute per 1,000 ft') };
  }
  const ends = chosen.map((row) => row.upToFt as number);
  const index = bandIndex(elevation, ends);
  const row = index === undefined ? undefined : chosen[index];
  if (row === undefined || index === undefined) return undefined;
  // the per-1000-ft steps begin at 1,000 ft itself; up to there nothing is added
  const below = rule === 'per-1000-ft' && exactIn(elevation, 'ft').lt(first.upToFt as number);
  const adds = rule === 'per-1000-ft' && baseMinutes > LONGER ? row.addOver20 : row.add;
  return { minutes: below ? 0 : (adds as number), basis: basisOf(row, 'added', bandText(ends, index)) };
}
