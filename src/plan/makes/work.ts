/** What the steps of a recipe take of hands and pots, for one pack: the only place that reads operations for the plan. */

import { parseQuantity } from '../../quantity/parseQuantity';
import { valueIn } from '../../quantity/scale';
import { isFor, OPERATIONS, RECIPES } from '../../recipes/rows/rows';
import type { Makes, OperationRow, RecipeRow, StepRow } from '../../recipes/rows/tables';
import { ends, operationOf } from '../../recipes/step';
import type { Basis } from '../../sources/basis';
import { practiceBasis } from '../../sources/table';
import { customary } from '../figures/customary';

/** Where the work of the day ends: what then goes on by itself, or keeps. */
export type End = 'can' | 'dry' | 'freeze-dry' | 'freeze' | 'ferment' | 'keep cold';

const ENDS: ReadonlyMap<string, End> = new Map([
  ['process', 'can'],
  ['dry', 'dry'],
  ['freeze-dry', 'freeze-dry'],
  ['freeze', 'freeze'],
  ['ferment', 'ferment'],
  ['refrigerate', 'keep cold'],
]);

/** What a recipe takes of a kitchen, by the kilogram of raw food, by the unit and by the pot. */
export interface RecipeWork {
  readonly end: End;
  /** Minutes of one pair of hands for each kg, for each jar, bag or tray, and for each batch. */
  readonly handsPerKg: number;
  /** Of the minutes for each kg, those that come after the pot: kernels are cut off ears that are blanched. */
  readonly laterPerKg: number;
  readonly handsPerUnit: number;
  readonly handsPerBatch: number;
  /** Minutes that it stands by itself before it is cooked or filled. */
  readonly soak: number;
  /** The pot, where something is cooked in it: minutes besides those of heating up. */
  readonly pot?: {
    readonly minutes: number;
    /** What of that the page prints, at the least. */
    readonly printed: number;
    readonly stirred: boolean;
    readonly boilsDown: boolean;
    /** It is pressed or strained after it was cooked: the pot held its skins and seeds too. */
    readonly cookedWhole: boolean;
  };
  /** Where the food is blanched, minutes of the boiling water. */
  readonly blanch?: number;
  /** The steps until jars are filled, trays loaded or packs packed; and those afterwards. */
  readonly steps: readonly StepRow[];
  readonly before: readonly StepRow[];
  readonly after: readonly StepRow[];
  /** The step it ends in. */
  readonly last?: StepRow;
}

/** Of a customary range of minutes the figure that a plan counts on: between the practiced and the slow end. */
const paced = ({ low, high }: { readonly low: number; readonly high: number }): number =>
  low + (high - low) * customary('pace');

/** The printed time of a step at its slow end, in minutes. */
export const printedMinutes = ({ time, times = 1 }: StepRow): number | undefined =>
  time === undefined ? undefined : valueIn(parseQuantity(ends(time)[1], 'time'), 'min') * times;

/** The printed time of a step at its quick end, in minutes. */
const printedLow = ({ time, times = 1 }: StepRow): number =>
  time === undefined ? 0 : valueIn(parseQuantity(ends(time)[0], 'time'), 'min') * times;

const minutesOf = (step: StepRow): number => {
  const { minutes } = operationOf(step);
  return printedMinutes(step) ?? (minutes === undefined ? 0 : paced(minutes));
};

/** Minutes for each kg, jar or tray of an operation. */
export const minutesOfEach = ({
  minutesPerKg,
  minutesEach,
}: OperationRow): { readonly perKg: number; readonly each: number } => ({
  perKg: minutesPerKg === undefined ? 0 : paced(minutesPerKg),
  each: minutesEach === undefined ? 0 : paced(minutesEach),
});

/** Minutes of filling one bag, for recipes that print no packing. */
export const bagging = (): number => minutesOfEach(OPERATIONS.get('pack') as OperationRow).each;

/** The steps of one pack that are not left to the cook. */
export const stepsOf = ({ steps }: RecipeRow, pack: string): readonly StepRow[] =>
  steps.filter((step) => step.optional !== true && (step.pack ?? pack) === pack);

/** Where the steps end the day: in the canner, unless it ferments for weeks before. */
function endOf(steps: readonly StepRow[]): { readonly end: End; readonly at: number } {
  const found = (id: string): number => steps.findIndex((step) => step.do === id);
  const [canned, fermented] = [found('process'), found('ferment')];
  if (canned >= 0 && (fermented < 0 || fermented > canned)) return { end: 'can', at: canned };
  const all = [...ENDS].flatMap(([id, end]) => {
    // chilled on the way is not kept cold: only the last refrigerator counts
    const at = id === 'refrigerate' ? steps.map((step) => step.do).lastIndexOf(id) : found(id);
    return at < 0 || id === 'process' ? [] : [{ end, at }];
  });
  const others = all.filter(({ end }) => end !== 'keep cold');
  return (
    (others.length > 0 ? others : all).sort((one, other) => one.at - other.at)[0] ?? {
      end: 'keep cold',
      at: steps.length,
    }
  );
}

/** Steps that the plan says itself, at the minute they are done. */
const FILLING: ReadonlySet<string> = new Set([
  'fill-hot',
  'fill-raw',
  'acid-in-jars',
  'salt-in-jars',
  'cover',
  'load-trays',
  'spread',
]);
/** What stands by itself for longer than the work around it. */
const STANDING: ReadonlySet<OperationRow['takes']> = new Set(['nothing', 'refrigerator', 'crock', 'oven']);
/** Cooling and draining for some minutes is part of the work. */
const SHORT = 30;

/** Minutes that a step stands at least: as printed, or what is customary at the least. */
function standing(step: StepRow): number {
  const minutes = printedMinutes(step) ?? operationOf(step).minutes?.low ?? 0;
  return minutes > SHORT ? minutes : 0;
}

/** Work of hands by the kg between the pot and the trays or packs: cut off the kernels, mash, press. */
export function afterPot(steps: readonly StepRow[]): readonly StepRow[] {
  const { at } = endOf(steps);
  const day = steps.slice(0, at);
  const pot = day.findLastIndex((step) => operationOf(step).takes === 'burner');
  return pot < 0
    ? []
    : day.slice(pot + 1).filter((step) => {
        const { takes, minutesPerKg, small } = operationOf(step);
        return takes === 'hands' && minutesPerKg !== undefined && small !== true && !FILLING.has(step.do);
      });
}

/** What a recipe takes, for one pack. */
export function workOf(row: RecipeRow, pack: string): RecipeWork {
  const steps = stepsOf(row, pack);
  const { end, at } = endOf(steps);
  const day = steps.slice(0, at);
  const filled = day.findIndex((step) => FILLING.has(step.do));
  // what stands when it is packed holds up nothing
  const stood = day.findIndex((step) => FILLING.has(step.do) || step.do === 'pack');
  let [handsPerKg, handsPerUnit, handsPerBatch, soak, pot, attended] = [0, 0, 0, 0, 0, 0];
  let [boilsDown, cookedWhole] = [false, false];
  let printed = 0;
  let blanched: number | undefined;
  day.forEach((step, index) => {
    const operation = operationOf(step);
    const { perKg, each } = minutesOfEach(operation);
    if (operation.separates === true && pot > 0) cookedWhole = true;
    handsPerKg += perKg;
    handsPerUnit += each;
    if (perKg + each > 0) return;
    const minutes = minutesOf(step);
    if (step.do === 'blanch') blanched = minutes;
    else if (operation.takes === 'burner') {
      pot += minutes;
      printed += printedLow(step);
      if (operation.attended) attended += minutes;
      boilsDown ||= step.do === 'boil-down';
    } else if (operation.takes === 'hands') handsPerBatch += minutes;
    else if (STANDING.has(operation.takes) && (stood < 0 || index < stood)) soak += standing(step);
  });
  for (const step of steps.slice(at + 1)) {
    const { perKg, each } = minutesOfEach(operationOf(step));
    // what is done to it when it is dry is counted by the bag
    if (step.do === 'pack' || step.do === 'roll') handsPerUnit += each;
    if (step.do === 'powder') handsPerUnit += perKg / 10;
  }
  // in a recipe that is cooked besides, a blanching is work at the stove like peeling
  const only = blanched !== undefined && pot === 0;
  if (blanched !== undefined && !only) handsPerKg += blanched;
  const stop = filled < 0 ? at : filled;
  return {
    end,
    handsPerKg,
    laterPerKg: afterPot(steps).reduce((sum, step) => sum + minutesOfEach(operationOf(step)).perKg, 0),
    handsPerUnit,
    handsPerBatch,
    soak,
    ...(pot > 0 ? { pot: { minutes: pot, printed, stirred: attended >= pot / 2, boilsDown, cookedWhole } } : {}),
    ...(only ? { blanch: blanched as number } : {}),
    steps,
    before: steps.slice(0, stop),
    after: steps.slice(at + 1),
    ...(steps[at] === undefined ? {} : { last: steps[at] }),
  };
}

export const WORK_BASIS: Basis = practiceBasis('handsMinutes', 'minutes of each operation');

/** Customary minutes of preparing a raw pound of a food in a form, by the first recipe of one of these kinds that is for it. */
export function usualMinutesPerPound(
  food: string,
  form: string | undefined,
  makes: readonly Makes[],
  pack = 'hot',
): number {
  const own = RECIPES.filter((row) => makes.includes(row.makes) && isFor(row, food));
  const inForm = own.find(
    (row) => form !== undefined && [row.form, ...row.ingredients.map((line) => line.form)].includes(form),
  );
  const row = inForm ?? own[0];
  return row === undefined ? customary('minutes-per-pound') : workOf(row, pack).handsPerKg * KG_IN_POUND;
}
const KG_IN_POUND = 0.45359237;
