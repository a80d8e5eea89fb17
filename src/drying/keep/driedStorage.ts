import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { type FoundFood, food } from '../../foods/fields';
import { nameOf } from '../../foods/tables';
import { fields, readInput } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Basis, Caution } from '../../sources/basis';
import { type NotKnown, notKnown } from '../../sources/no';
import { basisOf } from '../../sources/table';
import { temperature } from '../../words/temperature';
import { basisFrom } from '../basis';
import { caution } from '../cautions';
import { dryingKind, isFatty, rowsFor } from '../pantry';
import { endsOf, figure, numberOf } from '../rows';
import { type MonthsRow, monthsRows, storageItem } from './tables';

const schema = /* @__PURE__ */ fields({
  /** The dried fruit or vegetable; `fruit` or `vegetable` for the general figures. */
  food: food(),
  /** Of the store: -40 to 60 degC. */
  temperature: temperature({ min: { value: -40, unit: 'degC' }, max: { value: 60, unit: 'degC' } }),
});
export type DriedStorageInput = z.input<typeof schema>;

/** How long dried food keeps. */
export interface KnownDriedStorage {
  /** These tables hold a figure. */
  readonly known: true;
  /** Trade name of the food. */
  readonly food: string;
  /** Months of good quality. */
  readonly months: {
    /** The low figure. */
    readonly low: number;
    /** The high figure. */
    readonly high: number;
  };
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}
/** How long dried food keeps, or why these tables hold no figure. */
export type DriedStorage = KnownDriedStorage | NotKnown;

const COOL = storageItem('months-fruit-cool');
const WARM = storageItem('months-fruit-warm');
const PART = storageItem('vegetable-share');
const RECOMMENDED = storageItem('months-recommended');
const HOT = storageItem('above-80');
/** degF of the warmer column of the chart. */
const ROOM = 70;

const cautions = () => [caution('mold-means-discard'), caution('follow-local-guidance')];

function noFood({ id, name }: FoundFood): NotKnown {
  return notKnown({
    code: isFatty(id) ? 'too-fatty' : 'no-fruit-or-vegetable',
    text: `these tables hold how long dried fruit and vegetables keep, and not ${name}`,
    instead: [{ text: 'keep it refrigerated or frozen', keep: 'freezer' }],
    basis: [basisOf(COOL, 'reason', 'months of dried fruit and vegetables')],
    cautions: cautions(),
  });
}

const tooWarm = (): NotKnown =>
  notKnown({
    code: 'store-too-warm',
    text: `these tables hold no months for a store above ${HOT.temperature_degF} degF; dried food deteriorates within months there`,
    instead: [{ text: `keep it at ${COOL.temperature_degF} degF or below` }, { text: 'freeze it', keep: 'freezer' }],
    basis: [basisOf(HOT, 'reason', 'keeping above 80 degF')],
    cautions: cautions(),
  });

interface Months {
  readonly low: number;
  readonly high: number;
  readonly basis: readonly Basis[];
}

/** The months of a kind in general: fruit as printed, vegetables a part of it. */
function generalMonths(kind: 'fruit' | 'vegetable', lender: string | undefined) {
  const part = kind === 'fruit' ? 1 : numberOf(PART);
  const line = (row: typeof COOL) =>
    basisFrom(row, 'months', 'months that dried fruit keeps, and vegetables half of it', lender);
  return {
    cool: numberOf(COOL) * part,
    warm: numberOf(WARM) * part,
    least: endsOf(RECOMMENDED)[0] * part,
    basis: [COOL, WARM, PART, RECOMMENDED].map(line),
  };
}

/** The months at a temperature: of the food's own column where it has one, else by the general figures. */
function monthsAt(
  degF: number,
  row: MonthsRow | undefined,
  general: ReturnType<typeof generalMonths>,
  own: readonly Basis[],
): Months {
  // half a part in a billion: 60 degF asked for in degC is still 60 degF
  const upTo = (limit: number) => degF <= limit + 1e-6;
  const { cool, warm, least } = general;
  const both = [...own, ...general.basis];
  if (upTo(figure(COOL.temperature_degF))) {
    if (row?.months_60degF) return { low: row.months_60degF[0], high: row.months_60degF[1], basis: own };
    return { low: row?.months_70degF[0] ?? least, high: cool, basis: both };
  }
  if (upTo(ROOM) && row !== undefined) return { low: row.months_70degF[0], high: row.months_70degF[1], basis: own };
  const [low, high] = row?.months_70degF ?? [least, warm];
  return { low: Math.min(low, warm), high: Math.min(high, warm), basis: both };
}

/**
 * How many months home-dried fruit or vegetables keep their quality, sealed, dark and dry; `moistureAfterStorage` says
 * how moist they get.
 *
 * The chart has columns for 60 and 70 degF and general figures reach to 80 degF: a temperature between two columns
 * takes the warmer one. A food that is not in the chart takes the general figures: fruit 12 months at 60 degF and 6 at
 * 80 degF, vegetables half of that. These tables hold nothing above 80 degF but that food soon deteriorates.
 *
 * Sources: University of Minnesota Extension (the chart), National Center for Home Food Preservation (general figures).
 *
 * @returns `months` as a low and a high figure, or `known: false` with the reason
 * @throws StillroomError UNKNOWN_NAME with the nearest names
 *
 * @example
 * ```ts
 * import { driedStorage } from 'stillroom/drying';
 *
 * const answer = driedStorage({ food: 'carrots', temperature: '70 degF' });
 * answer.known && answer.months; // => { low: 4, high: 6 }
 * ```
 */
export function driedStorage(input: DriedStorageInput): DriedStorage {
  const { food: asked, temperature: store } = readInput(schema, input);
  const kind = dryingKind(asked.id);
  if (kind === undefined) return answer(noFood(asked));
  const degF = valueIn(store, 'degF');
  if (degF > figure(HOT.temperature_degF) + 1e-6) return answer(tooWarm());
  const { rows, lender } = rowsFor(monthsRows, asked.id, 'dried-storage');
  const [row] = rows;
  const own = row === undefined ? [] : [basisFrom(row, 'months', `printed for ${row.printed}`, lender)];
  const general = generalMonths(kind, asked.id === kind ? undefined : nameOf(kind));
  const { low, high, basis } = monthsAt(degF, row, general, own);
  return answer({
    known: true,
    food: asked.name,
    months: { low: Math.min(low, high), high },
    basis,
    cautions: cautions(),
  });
}
