import type * as z from 'zod/mini';
import pasteurizingTable from '../../../data/drying/pasteurizing.json';
import { answer } from '../../common/answer';
import { choice, fields, optional, readInput, volume } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { caution } from '../cautions';
import { endsOf, numberOf, setting } from './settings';
import { lotsFor } from './trayLoad';

const conditioningSchema = fields({ dried: optional(volume()), container: optional(volume()) });
export type ConditioningInput = z.input<typeof conditioningSchema>;

export interface Conditioning {
  readonly days: Range<Quantity<'time'>>;
  /** How full the containers may be. */
  readonly fill: number;
  /** Containers for the dried food; given both volumes. */
  readonly containers?: number;
  readonly steps: readonly string[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const FILL = setting('conditioning_fill_fraction');
const DAYS = ['conditioning_days_USU', 'conditioning_USDA', 'conditioning_days_MSU', 'conditioning_days'].map(setting);

/**
 * Conditioning: how long dried fruit stands in closed, loosely filled containers so that its moisture evens out, and
 * how many containers that takes.
 *
 * Printed: 7 to 14 days, 7 days, 4 to 10 and 7 to 10 days; served 7 (what all but one ask for) to 14. Containers about
 * two-thirds full: containers = dried / (2/3 container), rounded up.
 *
 * @param input.dried - volume of the dried food
 * @param input.container - volume of one container
 * @returns `days`, `fill` as a share, `containers`, and the steps in order
 * @throws StillroomError WRONG_DIMENSION
 *
 * @example
 * ```ts
 * import { conditioning } from 'stillroom/drying';
 *
 * conditioning({ dried: '6 quarts', container: '1 gallon' }).containers; // => 3
 * ```
 */
export function conditioning(input: ConditioningInput): Conditioning {
  const { dried, container } = readInput(conditioningSchema, input);
  const [least, most] = endsOf(setting('conditioning_days_USU'));
  const [, usual] = endsOf(setting('conditioning_days'));
  const day = (value: number): Quantity<'time'> => ({ value, unit: 'day' });
  const fill = numberOf(FILL);
  return answer({
    days: { low: day(least), likely: day(usual), high: day(most) },
    fill,
    ...(dried === undefined || container === undefined
      ? {}
      : { containers: lotsFor(valueIn(dried, 'mL'), valueIn(container, 'mL') * fill) }),
    steps: [
      'let the dried pieces cool',
      'fill clear containers about two-thirds full and close them',
      'shake them every day so that no pieces stick together',
      'at the first condensation on the lid, dry the batch again',
      'then pack in small amounts, airtight, cool and dark',
    ],
    basis: joinBasis(
      DAYS.map((row) => basisOf(row, 'days of conditioning')),
      [basisOf(FILL, 'fill of the containers')],
    ),
    cautions: [caution('condition-dried-fruit'), caution('mould-means-discard')],
  });
}

interface PasteurizingRow extends Sourced {
  readonly method: string;
  readonly temperature_degF: number | null;
  readonly hours_min?: number;
  readonly minutes?: number;
  readonly maxDepth_in?: number;
  readonly maxTrays?: number;
}

const treatments = asTable<PasteurizingRow>(pasteurizingTable).rows;
const OTHER_OVEN = setting('pasteurizeOven_USDA');
const OTHER_FREEZER = setting('pasteurizeFreezer_USDA');

const pasteurizingSchema = fields({
  kind: choice('what was dried', ['fruit', 'vegetable']),
  by: optional(choice('the way', ['freezer', 'oven'])),
});
export type PasteurizingInput = z.input<typeof pasteurizingSchema>;

/** One printed way to kill insects and their eggs. */
export interface PasteurizingTreatment {
  readonly by: 'freezer' | 'oven';
  readonly temperature: Quantity<'temperature'>;
  readonly atLeast: Quantity<'time'>;
  readonly depth?: Quantity<'length'>;
  readonly trays?: number;
}

export interface Pasteurizing {
  readonly treatments: readonly PasteurizingTreatment[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The printed treatments that kill insects and their eggs in food dried outdoors or left open.
 *
 * Freezer: 48 hours at 0 degF or below. Oven: 160 degF for 30 minutes, or 175 degF for 15. One sheet prints 150 degF,
 * and one 10 minutes at 175 degF for brittle vegetables: the hotter and the longer are served.
 *
 * @param input.kind - `fruit` or `vegetable`
 * @param input.by - `freezer` or `oven`; both if not given
 * @returns the treatments, each enough by itself
 * @throws StillroomError UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { pasteurizing } from 'stillroom/drying';
 *
 * pasteurizing({ kind: 'fruit', by: 'freezer' }).treatments[0]?.atLeast; // => { value: 48, unit: 'h' }
 * ```
 */
export function pasteurizing(input: PasteurizingInput): Pasteurizing {
  const { kind, by } = readInput(pasteurizingSchema, input);
  const fits = ({ method: printed }: PasteurizingRow): boolean =>
    (by === undefined || printed.startsWith(by)) &&
    !(printed.endsWith('fruit') && kind === 'vegetable') &&
    !(printed.endsWith('vegetables') && kind === 'fruit');
  const rows = treatments.filter(fits);
  const served: PasteurizingTreatment[] = [];
  const freezer = rows.filter((row) => row.hours_min !== undefined);
  if (freezer.length > 0) {
    // the coldest and longest of the copies
    served.push({
      by: 'freezer',
      temperature: {
        value: freezer.find((row) => row.temperature_degF !== null)?.temperature_degF as number,
        unit: 'degF',
      },
      atLeast: { value: Math.max(...freezer.map((row) => row.hours_min as number)), unit: 'h' },
    });
  }
  const oven = rows.filter((row) => row.minutes !== undefined);
  for (const degF of new Set(oven.map((row) => row.temperature_degF as number))) {
    const same = oven.filter((row) => row.temperature_degF === degF);
    const layer = same.find((row) => row.maxDepth_in !== undefined);
    served.push({
      by: 'oven',
      temperature: { value: degF, unit: 'degF' },
      atLeast: { value: Math.max(...same.map((row) => row.minutes as number)), unit: 'min' },
      ...(layer === undefined
        ? {}
        : { depth: { value: layer.maxDepth_in as number, unit: 'in' }, trays: layer.maxTrays as number }),
    });
  }
  const basis = joinBasis(
    rows.map((row) => basisOf(row, `${row.method} treatment`)),
    by === 'freezer' ? [] : [basisOf(OTHER_OVEN, 'another sheet prints 150 degF for 30 min; the higher is served')],
    by === 'oven' ? [] : [basisOf(OTHER_FREEZER, 'freezer treatment')],
  );
  return answer({
    treatments: served,
    basis,
    cautions: [caution('pasteurizing-is-for-insects'), caution('sun-drying-fruit-only')],
  });
}
