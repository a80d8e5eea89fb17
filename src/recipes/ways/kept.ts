/** What lots give dried or frozen, as a cook counts it: what it weighs, and the pints it fills. */
import { dryingGuide } from '../../drying/guide/dryingGuide';
import { formName } from '../../foods/tables';
import { composition } from '../../produce/composition/composition';
import { massBought } from '../../produce/weights/asBought';
import { rawForJars } from '../../produce/yields/rawForJars';
import { readyFromRaw } from '../../produce/yields/readyFromRaw';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { type Basis, behind, derived } from '../../sources/basis';
import type { RecipeRow } from '../rows/tables';
import type { Lot } from './lot';

/** A weight to the digits that a kitchen scale shows. */
const DIGITS = 3;

/** Two ends. */
interface Ends {
  readonly low: number;
  readonly high: number;
}
/** What lots give. */
export interface Kept {
  /** Pints that it fills. */
  readonly pints?: Ends;
  /** What it weighs. */
  readonly mass?: { readonly low: Quantity<'mass'>; readonly high: Quantity<'mass'> };
  readonly basis: readonly Basis[];
}

/** What the lots of one food weigh. */
export interface Raw {
  readonly food: Lot['food'];
  readonly mass: Quantity<'mass'>;
  readonly basis: readonly Basis[];
}

/** The lots of each food together; none where one of them is not weighed. */
export function rawOf(lots: readonly Lot[]): readonly Raw[] | undefined {
  const byFood = new Map<string, Raw>();
  for (const { food, raw } of lots) {
    const found = raw === undefined ? undefined : massBought(food.id, raw);
    if (found?.known !== true) return undefined;
    const { likely } = found.raw;
    const before = byFood.get(food.id);
    const mass =
      before === undefined
        ? likely
        : { value: before.mass.value + valueIn(likely, before.mass.unit), unit: before.mass.unit };
    byFood.set(food.id, { food, mass, basis: [...(before?.basis ?? []), ...found.basis] });
  }
  return [...byFood.values()];
}

function frozen({ food, mass, basis }: Raw): Kept | undefined {
  const found = rawForJars({ food: food.name, form: 'frozen', jar: 'pint', raw: mass });
  if (!found.known) return undefined;
  const { low, high } = found.jars;
  return { pints: { low, high }, basis: behind('ways[].yields', [...basis, ...found.basis]) };
}

/** By the guide's printed yield: the pounds and pints of dried food that a weight as bought gives. */
function byPrintedYield({ food, mass, basis }: Raw): Kept | undefined {
  const guide = dryingGuide({ food: food.name });
  if (!guide.known) return undefined;
  const printed = guide.printedYields.find(
    ({ dried, driedVolume }) => dried !== undefined && driedVolume !== undefined,
  );
  if (printed?.fresh === undefined || printed.driedVolume === undefined) return undefined;
  const { driedShare, fresh, driedVolume } = printed;
  const times = valueIn(mass, 'lb') / valueIn(fresh, 'lb');
  const weighing = (share: number): Quantity<'mass'> => ({ value: mass.value * share, unit: mass.unit });
  const lines = [...basis, ...guide.basis.filter(({ of }) => of === 'printedYields[]')];
  return {
    mass: { low: weighing(driedShare.low), high: weighing(driedShare.high) },
    pints: {
      low: Math.floor(valueIn(driedVolume.low, 'pint') * times + 1e-9),
      high: Math.ceil(valueIn(driedVolume.high, 'pint') * times - 1e-9),
    },
    basis: [...behind('ways[].mass', lines), ...behind('ways[].yields', lines)],
  };
}

/** By the solids: what is ready keeps all of them, and water to the moisture that the page dries to. */
function bySolids({ ingredients, steps }: RecipeRow, { food, mass, basis }: Raw): Kept | undefined {
  const moisture = steps.find((step) => step.moisture !== undefined)?.moisture;
  const form = ingredients.find((line) => line.food === '@scope')?.form;
  if (moisture === undefined) return undefined;
  const to = typeof moisture === 'number' ? { low: moisture, high: moisture } : moisture;
  const held = composition({ food: food.name });
  const found = readyFromRaw({ food: food.name, ...(form === undefined ? {} : { form: formName(form) }), raw: mass });
  if (!(held.known && found.known) || held.moisture.low <= to.high) return undefined;
  const dry = (ready: Quantity<'mass'>, water: number, end: number): Quantity<'mass'> => ({
    value: (ready.value * (1 - water)) / (1 - end),
    unit: ready.unit,
  });
  const { low, high } = found.ready;
  return {
    mass: { low: dry(low, held.moisture.high, to.low), high: dry(high, held.moisture.low, to.high) },
    basis: [
      ...behind('ways[].mass', [...basis, ...found.basis, ...held.basis.filter(({ of }) => of === 'moisture')]),
      derived('ways[].mass', 'the solids of what is ready, and the moisture of the page'),
    ],
  };
}

const sum = (parts: readonly (number | undefined)[]): number | undefined =>
  parts.reduce<number | undefined>(
    (all, each) => (all === undefined || each === undefined ? undefined : all + each),
    0,
  );

/**
 * What lots give by a recipe that dries or freezes: by the printed pounds for a frozen pint, by the printed yield of dried
 * food, or else by the solids. Nothing where a lot is not weighed, or these tables do not hold it.
 */
export function keptOf(row: RecipeRow, lots: readonly Lot[]): Kept | undefined {
  const dries = row.makes === 'dried';
  if (!dries && row.byFrozenPints !== true) return undefined;
  const raws = rawOf(lots);
  const parts = raws?.map((raw) => (dries ? (byPrintedYield(raw) ?? bySolids(row, raw)) : frozen(raw)));
  const known = parts?.flatMap((part) => (part === undefined ? [] : [part]));
  const [first] = raws ?? [];
  if (first === undefined || parts === undefined || known === undefined || known.length < parts.length)
    return undefined;
  const { unit } = first.mass;
  const pints = (end: keyof Ends) => sum(known.map((each) => each.pints?.[end]));
  const mass = (end: keyof Ends) =>
    sum(known.map((each) => (each.mass === undefined ? undefined : valueIn(each.mass[end], unit))));
  const shown = (value: number): Quantity<'mass'> => ({ value: Number(value.toPrecision(DIGITS)), unit });
  const [least, most, lightest, heaviest] = [pints('low'), pints('high'), mass('low'), mass('high')];
  return {
    ...(least === undefined || most === undefined ? {} : { pints: { low: least, high: most } }),
    ...(lightest === undefined || heaviest === undefined
      ? {}
      : { mass: { low: shown(lightest), high: shown(heaviest) } }),
    basis: known.flatMap((each) => each.basis),
  };
}
