/** One recipe as a way to keep a food: what it needs, lacks, gives and takes here; or why it is closed. */
import type * as z from 'zod/mini';
import { food } from '../../foods/fields';
import { formName, nameOf } from '../../foods/tables';
import { bought } from '../../produce/weights/asBought';
import { fields, isMass, name, optional } from '../../quantity/fields';
import { parseQuantity } from '../../quantity/parseQuantity';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis } from '../../sources/basis';
import type { Reason } from '../../sources/no';
import { readJar } from '../../words/jar';
import type { AnyPack } from '../../words/pack';
import { batchesOf, mainLine } from '../batchesOf';
import { keepingOf, type RecipeKeeping } from '../keeping';
import { pageOf } from '../rows/rows';
import type { Makes, RecipeRow } from '../rows/tables';
import { batchesHere } from '../scale';
import { type Canned, cannedIn, packsFor, type WayProcess } from './canned';
import { type Effort, effortOf } from './effort';
import type { WaysKitchen } from './kitchen';
import { cannerLacking, type Lack, lackingFor } from './lacking';

/** What was bought or picked. */
export const lot = () =>
  fields({
    /** What you call it. */
    name: optional(name('a name for the lot')),
    /** The food. */
    food: food(),
    /** How much of it, as bought: a mass, a volume, or pieces or containers. */
    raw: optional(bought()),
  });
export type Lot = z.output<ReturnType<typeof lot>>;

/** A time from the practiced to the slow end. */
export interface TimeSpan {
  /** The practiced end. */
  readonly low: Quantity<'time'>;
  /** The slow end. */
  readonly high: Quantity<'time'>;
}

/** One thing that a recipe needs besides the food. */
export interface Need {
  /** What it is. */
  readonly what: string;
  /** How much of it for one batch, as printed. */
  readonly amount?: Quantity<'mass'> | Quantity<'volume'>;
  /** Never use less of it. */
  readonly neverLess: boolean;
}

/** One recipe that a food can go into here. */
export interface Way {
  /** Fixed name: ask `recipe` for it. */
  readonly recipe: string;
  /** What its page calls it. */
  readonly name: string;
  /** What it makes. */
  readonly makes: Makes;
  /** Trade names of your foods that go into it. */
  readonly foods: readonly string[];
  /** The form that the ready food is asked for by. */
  readonly form?: string;
  /** Where and how long it keeps. */
  readonly keeps: readonly RecipeKeeping[];
  /** The tested processes here: each pack, jar and canner with its minutes; empty where it is not canned. */
  readonly processes: readonly WayProcess[];
  /** What else goes in, for one batch. */
  readonly needs: readonly Need[];
  /** What of equipment and pantry is not there. */
  readonly lacking: readonly Lack[];
  /** How many batches your lot makes, where the page prints an amount. */
  readonly batches?: number;
  /** Jars or packs: of your lot where `batches` is known, of one batch otherwise. */
  readonly yields: readonly {
    /** Size of the jar or pack. */
    readonly jar: string;
    /** The least. */
    readonly low: number;
    /** The most. */
    readonly high: number;
  }[];
  /** Work of hands: of your lot where `batches` is known, of one batch otherwise. */
  readonly handsOn?: TimeSpan;
  /** On the clock until it is in jars, on trays or in the freezer, one thing after the other. */
  readonly clock?: TimeSpan;
  /** By itself after that: drying, fermenting, freezing, standing. */
  readonly alone?: TimeSpan;
  /** What must not be changed. */
  readonly mustKeep: readonly string[];
  /** What the page says of other sizes of the batch. */
  readonly scale: string;
}

/** A way that is closed, and why. */
export interface ClosedWay {
  /** Fixed name of the recipe, where it is one recipe. */
  readonly recipe?: string;
  /** What it is called. */
  readonly name: string;
  /** Why it is closed. */
  readonly reason: Reason;
}

const minutes = ({ low, high }: { readonly low: number; readonly high: number }): TimeSpan => ({
  low: { value: Math.round(low), unit: 'min' },
  high: { value: Math.round(high), unit: 'min' },
});

/** What a batch weighs before it is cut, where the page prints a weight. */
function kgOfBatch(row: RecipeRow, foodId: string): number | undefined {
  const line = mainLine(row, foodId);
  const need = row.rawNeed?.[0]?.raw;
  const printed = line?.amount ?? need;
  if (printed === undefined) return undefined;
  const amount = parseQuantity(printed) as Quantity<'mass'> | Quantity<'volume'>;
  // a liter of prepared food is about a kilogram
  return isMass(amount) ? valueIn(amount, 'kg') : valueIn(amount, 'L');
}

interface Sized {
  readonly batches?: number;
  readonly effort?: Effort;
  readonly basis: readonly Basis[];
}

/** How many batches the lots make together; not known where one of them cannot be measured as the page measures it. */
function batchesOfLots(
  row: RecipeRow,
  lots: readonly Lot[],
): { readonly batches: number; readonly basis: readonly Basis[] } | undefined {
  const byFood = new Map<string, number>();
  const basis: Basis[] = [];
  for (const { food: of, raw } of lots) {
    const found = raw === undefined ? undefined : batchesOf(row, of, { raw });
    if (found?.known !== true) return undefined;
    byFood.set(of.id, (byFood.get(of.id) ?? 0) + found.batches);
    basis.push(...found.basis);
  }
  const all = [...byFood.values()];
  // a page that mixes its foods as printed takes each by its own line: the scarcest decides
  const batches = row.mix === 'as printed' ? Math.min(...all) : all.reduce((sum, each) => sum + each, 0);
  return { batches: Number(batches.toPrecision(12)), basis };
}

/** How many batches the lots make, and what they take. */
function sizeOf(row: RecipeRow, lots: readonly Lot[], packs: readonly AnyPack[]): Sized {
  const [first] = lots as readonly [Lot, ...Lot[]];
  const found = batchesOfLots(row, lots);
  const batches = found === undefined ? undefined : batchesHere(row.batch, found.batches);
  const kg = kgOfBatch(row, first.food.id);
  const units = row.yields?.[0]?.high ?? row.rawNeed?.[0]?.jars ?? 7;
  const by = batches === undefined || batches === 0 ? 1 : batches;
  return {
    ...(batches === undefined ? {} : { batches }),
    ...(kg === undefined ? {} : { effort: effortOf(row, kg * by, units * by, packs) }),
    basis: (found?.basis ?? []).map((line) => ({ ...line, of: 'ways[].batches' })),
  };
}

function yieldsOf({ yields = [], rawNeed = [] }: RecipeRow, batches = 1): Way['yields'] {
  const by = batches === 0 ? 1 : batches;
  const printed = yields.length > 0 ? yields : rawNeed.map(({ jar, jars }) => ({ jar, low: jars, high: jars }));
  return printed.map(({ jar, low, high }) => ({
    jar,
    low: Math.floor(low * by + 1e-9),
    high: Math.ceil(high * by - 1e-9),
  }));
}

const needsOf = ({ ingredients }: RecipeRow): Need[] =>
  ingredients
    .filter(
      ({ food: id, role, optional: may }) => id !== '@scope' && may !== true && !['fruit', 'spice'].includes(role),
    )
    .map(({ food: id, item, amount, keep }) => ({
      what: id === undefined ? (item as string) : nameOf(id),
      ...(amount === undefined ? {} : { amount: parseQuantity(amount) as Quantity<'mass'> }),
      neverLess: keep === true,
    }));

/** The processes of a recipe here; none where it is not canned, or no kitchen is named. */
function processesOf(
  row: RecipeRow,
  foodId: string,
  packs: readonly AnyPack[],
  kitchen: WaysKitchen | undefined,
): Canned | undefined {
  const process = row.keeps.flatMap((keep) => ('process' in keep ? [keep.process] : []))[0];
  if (process === undefined || kitchen === undefined) return undefined;
  return cannedIn(foodId, process, packs, {
    elevation: kitchen.elevation,
    methods: kitchen.canners?.map(({ method }) => method),
    jars: kitchen.jars?.filter(({ count }) => count !== 0).map(({ jar }) => readJar(jar)),
  });
}

export type Found = { readonly way: Way; readonly row: RecipeRow; readonly basis: readonly Basis[] } | ClosedWay;

/** What a way shows of a process; the rest of its basis stands in `testedProcess`. */
const PROCESS_FIELDS: ReadonlySet<string> = new Set([
  'minutes',
  'pressure',
  'headspace',
  'acid',
  'sterilizeJars',
  'jar',
]);

/** A recipe for the lots whose foods go into it. */
export function wayOf(row: RecipeRow, lots: readonly Lot[], kitchen: WaysKitchen | undefined): Found {
  const [first] = lots as readonly [Lot, ...Lot[]];
  // a pack is open only where the page names every one of the foods for it
  const packs = lots
    .map(({ food: { id } }) => packsFor(row, id))
    .reduce((one, other) => one.filter((pack) => other.includes(pack)));
  const canned = processesOf(row, first.food.id, packs, kitchen);
  const lacking = lackingFor(row, kitchen);
  const closed = canned !== undefined && canned.processes.length === 0;
  const onlyProcess = row.keeps.every((keep) => 'process' in keep);
  if (closed && onlyProcess && canned.otherCanners.length === 0) {
    const reason = canned.reason ?? { code: 'no process', text: `no process of ${row.name} is served here` };
    return { recipe: row.id, name: row.name, reason };
  }
  const { batches, effort, basis } = sizeOf(row, lots, packs);
  if (batches === 0) {
    const text = `the lot is less than one whole batch of ${row.name}, which is not made in parts`;
    return { recipe: row.id, name: row.name, reason: { code: 'less than a batch', text } };
  }
  return {
    row,
    basis: [
      pageOf(row, 'ways[].needs', row.name),
      ...(canned?.served ?? []).flatMap((each) =>
        each.basis
          .filter(({ of }) => PROCESS_FIELDS.has(of))
          .map((line) => ({ ...line, of: `ways[].processes[].${line.of}` })),
      ),
      ...basis,
    ],
    way: {
      recipe: row.id,
      name: row.name,
      makes: row.makes,
      foods: [...new Set(lots.map((each) => each.food.name))],
      ...(row.form === undefined ? {} : { form: formName(row.form) }),
      keeps: row.keeps.map(keepingOf),
      processes: canned?.processes ?? [],
      needs: needsOf(row),
      lacking: closed && onlyProcess ? [cannerLacking(canned.otherCanners), ...lacking] : lacking,
      ...(batches === undefined ? {} : { batches }),
      yields: yieldsOf(row, batches),
      ...(effort === undefined
        ? {}
        : { handsOn: minutes(effort.hands), clock: minutes(effort.clock), alone: minutes(effort.alone) }),
      mustKeep: row.mustKeep ?? [],
      scale: row.batch.scale,
    },
  };
}
