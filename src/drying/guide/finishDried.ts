import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { food } from '../../foods/fields';
import { choice, fields, optional, readInput } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { type NotKnown, notKnown } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { volume } from '../../words/volume';
import { caution } from '../cautions';
import { dryingKind } from '../pantry';
import { endsOf, figure, numberOf } from '../rows';
import { type PasteurizingRow, pasteurizingRows, setting } from './tables';
import { lotsFor } from './trayLoad';

const schema = /* @__PURE__ */ fields({
  /** What was dried: a fruit or a vegetable; `fruit` or `vegetable` do. */
  food: food(),
  /** Volume of the dried food, for `conditioning.containers`: above zero. */
  driedVolume: optional(volume()),
  /** Volume of one container, for `conditioning.containers`: above zero. */
  containerVolume: optional(volume()),
  /** How to kill insects: `freezer` or `oven`; both if not given. */
  by: optional(choice('the way', ['freezer', 'oven'])),
});
export type FinishDriedInput = z.input<typeof schema>;

/** How to condition dried pieces until their moisture evens out. */
export interface Conditioning {
  /** How long it takes. */
  readonly days: Range<Quantity<'time'>>;
  /** How full the containers may be, a share of their volume. */
  readonly fill: number;
  /** Containers for the dried food; given where both volumes are. */
  readonly containers?: number;
  /** What to do, in order. */
  readonly nextSteps: readonly string[];
}

/** One printed way to kill insects and their eggs. */
export interface InsectTreatment {
  /** `freezer` or `oven`. */
  readonly by: 'freezer' | 'oven';
  /** Of the freezer, or of the oven. */
  readonly temperature: Quantity<'temperature'>;
  /** The least time. */
  readonly atLeast: Quantity<'time'>;
  /** The deepest layer. */
  readonly depth?: Quantity<'length'>;
  /** The most trays at a time. */
  readonly trays?: number;
}

/** What to do with food from the dryer before it is put away. */
export interface FinishedDried {
  /** These tables hold what to do. */
  readonly known: true;
  /** Trade name of the food. */
  readonly food: string;
  /** How to condition the pieces until their moisture evens out; printed for fruit. */
  readonly conditioning: Conditioning;
  /** For food that was dried outdoors or left open: each treatment is enough by itself. */
  readonly insects: readonly InsectTreatment[];
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}
/** What to do with food from the dryer, or that these tables hold nothing for it. */
export type FinishDried = FinishedDried | NotKnown;

const FILL = setting('conditioning-fill');
const LONG = setting('conditioning-days-usu');
const USUAL = setting('conditioning-days-nchfp');
const DAYS = [LONG, setting('conditioning-days-usda'), setting('conditioning-days-msu'), USUAL];

const STEPS = [
  'let the dried pieces cool',
  'fill clear containers about two-thirds full and close them',
  'shake them every day so that no pieces stick together',
  'at the first condensation on the lid, dry the batch again',
  'then pack in small amounts, airtight, cool and dark',
];

function conditioning(driedMilliliters: number | undefined, container: number | undefined): Conditioning {
  const [least, most] = endsOf(LONG);
  const [, usual] = endsOf(USUAL);
  const day = (value: number): Quantity<'time'> => ({ value, unit: 'day' });
  const fill = numberOf(FILL);
  return {
    days: { low: day(least), likely: day(usual), high: day(most) },
    fill,
    ...(driedMilliliters === undefined || container === undefined
      ? {}
      : { containers: lotsFor(driedMilliliters, container * fill) }),
    nextSteps: STEPS,
  };
}

/** The treatments with the rows behind each: of several readings the hotter (or colder) and the longer. */
function treatments(rows: readonly PasteurizingRow[]) {
  const served = rows.filter((row) => row.served);
  const freezer = served.filter(({ by }) => by === 'freezer');
  const oven = served.filter(({ by }) => by === 'oven');
  const frozen = freezer.find((row) => row.temperature_degF !== null);
  const found: { readonly treatment: InsectTreatment; readonly rows: readonly PasteurizingRow[] }[] = [];
  if (frozen !== undefined) {
    found.push({
      treatment: {
        by: 'freezer',
        temperature: { value: figure(frozen.temperature_degF), unit: 'degF' },
        atLeast: { value: Math.max(...freezer.map((row) => figure(row.hours_min))), unit: 'h' },
      },
      rows: freezer,
    });
  }
  for (const degF of new Set(oven.map((row) => figure(row.temperature_degF)))) {
    const same = oven.filter((row) => row.temperature_degF === degF);
    const layer = same.find((row) => row.maxDepth_in !== undefined);
    found.push({
      treatment: {
        by: 'oven',
        temperature: { value: degF, unit: 'degF' },
        atLeast: { value: Math.max(...same.map((row) => figure(row.minutes))), unit: 'min' },
        ...(layer === undefined
          ? {}
          : { depth: { value: figure(layer.maxDepth_in), unit: 'in' }, trays: figure(layer.maxTrays) }),
      },
      rows: same,
    });
  }
  return found;
}

/**
 * What to do with food from the dryer before it is put away: how long to keep the pieces in closed, loosely filled
 * containers so that their moisture evens out, how many containers that takes, and, for food that was dried outdoors or
 * left open, the printed treatments that kill insects and their eggs.
 *
 * Days: printed 7 to 14 days, 7 days, 4 to 10 and 7 to 10 days, for fruit; served 7 (what all but one ask for) to 14.
 * Containers about two-thirds full: containers = dried / (2/3 container), rounded up. Insects: 48 hours in a freezer at
 * 0 degF or below; or an oven at 160 degF for 30 minutes, or at 175 degF for 15. One sheet prints 150 degF, and one 10
 * minutes at 175 degF for brittle vegetables: the hotter and the longer are served.
 *
 * @returns `conditioning` and `insects`; or `known: false` for meat and other food that is no fruit or vegetable
 * @throws StillroomError UNKNOWN_NAME, WRONG_DIMENSION
 *
 * @example
 * ```ts
 * import { finishDried } from 'stillroom/drying';
 *
 * const finish = finishDried({ food: 'apples', driedVolume: '6 quarts', containerVolume: '1 gallon', by: 'freezer' });
 * finish.known && finish.conditioning.containers; // => 3
 * finish.known && finish.insects[0]?.atLeast; // => { value: 48, unit: 'h' }
 * ```
 */
export function finishDried(input: FinishDriedInput): FinishDried {
  const { food: dried, driedVolume, containerVolume: container, by } = readInput(schema, input);
  const kind = dryingKind(dried.id);
  const rows = pasteurizingRows.filter(
    (row) => (by === undefined || row.by === by) && (kind === undefined || row.kinds.includes(kind)),
  );
  if (kind === undefined) {
    return answer(
      notKnown({
        code: 'no-fruit-or-vegetable',
        text: `these tables hold how dried fruit and vegetables are finished, and not ${dried.name}`,
        instead: 'keep it refrigerated or frozen',
        basis: rows.map((row) => basisOf(row, 'reason', 'treatments of dried fruit and vegetables')),
        cautions: [caution('pasteurizing-is-for-insects')],
      }),
    );
  }
  const found = treatments(rows);
  const lower = rows.filter((row) => !row.served);
  return answer({
    known: true,
    food: dried.name,
    conditioning: conditioning(driedVolume && valueIn(driedVolume, 'mL'), container && valueIn(container, 'mL')),
    insects: found.map(({ treatment }) => treatment),
    basis: [
      ...DAYS.map((row) => basisOf(row, 'conditioning.days', 'printed for fruit')),
      basisOf(FILL, 'conditioning.fill'),
      ...found.flatMap(({ rows: behind }) => behind.map((row) => basisOf(row, 'insects[]'))),
      ...lower.map((row) => basisOf(row, 'insects', 'another sheet prints less; the higher is served')),
    ],
    cautions: [
      caution('condition-dried-fruit'),
      caution('mold-means-discard'),
      caution('pasteurizing-is-for-insects'),
      caution('sun-drying-fruit-only'),
    ],
  });
}
