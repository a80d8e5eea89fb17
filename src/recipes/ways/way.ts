/** One recipe as a way to keep a food: what it needs, lacks, gives and takes here; or why it is closed. */
import { formName, nameOf } from '../../foods/tables';
import { isMass } from '../../quantity/fields';
import { parseQuantity } from '../../quantity/parseQuantity';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis } from '../../sources/basis';
import type { Reason } from '../../sources/no';
import { readJar } from '../../words/jar';
import type { AnyPack } from '../../words/pack';
import { batchesOf, MAIN, mainLine } from '../batchesOf';
import { keepingOf, type RecipeKeeping } from '../keeping';
import { mustKeepOf, pageOf } from '../rows/rows';
import type { Makes, RecipeRow } from '../rows/tables';
import { batchesHere } from '../scale';
import { type Canned, cannedIn, packsFor, shown, type WayProcess } from './canned';
import { type Effort, effortOf } from './effort';
import { keptOf } from './kept';
import type { WaysKitchen } from './kitchen';
import { cannerLacking, hasNoJars, isBrought, type Lack, lackingFor } from './lacking';
import type { Lot } from './lot';
import { jarsOf, yieldsOf } from './yields';

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
  /** What of equipment, pantry and other food is not there. */
  readonly lacking: readonly Lack[];
  /** How many batches your lot makes, where the page prints an amount. */
  readonly batches?: number;
  /** Jars or packs, dried food and frozen pieces in pints: of your lot where it is known, of one batch otherwise. */
  readonly yields: readonly {
    /** Size of the jar or pack. */
    readonly jar: string;
    /** The least. */
    readonly low: number;
    /** The most. */
    readonly high: number;
  }[];
  /** What your lot weighs dried, where these tables hold it. */
  readonly mass?: {
    /** The least. */
    readonly low: Quantity<'mass'>;
    /** The most. */
    readonly high: Quantity<'mass'>;
  };
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
  const by = batches === undefined || batches === 0 ? 1 : batches;
  const units = jarsOf(row, batches === undefined ? [] : lots, by)[0]?.high ?? 7 * by;
  return {
    ...(batches === undefined ? {} : { batches }),
    ...(kg === undefined ? {} : { effort: effortOf(row, kg * by, units, packs) }),
    basis: (found?.basis ?? []).map((line) => ({ ...line, of: 'ways[].batches' })),
  };
}

const needsOf = ({ ingredients }: RecipeRow, brought: readonly string[]): Need[] =>
  ingredients
    .filter(
      (line) =>
        line.optional !== true &&
        line.role !== 'spice' &&
        line.food !== '@scope' &&
        !(MAIN.has(line.role) && isBrought(line, brought)),
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
    // without any jars the question is whether it could be canned in some
    jars: hasNoJars(kitchen)
      ? undefined
      : kitchen.jars?.filter(({ count }) => count !== 0).map(({ jar }) => readJar(jar)),
  });
}

export type Found =
  | {
      readonly way: Way;
      readonly row: RecipeRow;
      /** Id of the food that it is a way for. */
      readonly food: string;
      readonly basis: readonly Basis[];
    }
  | ClosedWay;

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
  const brought = [...new Set(lots.map((each) => each.food.id))];
  const lacking = lackingFor(row, kitchen, brought);
  const closed = canned !== undefined && canned.processes.length === 0;
  const served = kitchen !== undefined && hasNoJars(kitchen) ? [] : (canned?.served ?? []);
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
  // the page's own yield goes before the general one
  const printed = batches !== undefined && (row.yields ?? row.rawNeed) !== undefined;
  const kept = keptOf(row, lots);
  return {
    row,
    food: first.food.id,
    basis: [
      pageOf(row, 'ways[].needs', row.name, first.food.id),
      ...served.flatMap((each) =>
        each.basis
          .filter(({ of }) => PROCESS_FIELDS.has(of))
          .map((line) => ({ ...line, of: `ways[].processes[].${line.of}` })),
      ),
      ...basis,
      ...(kept?.basis ?? []).filter(({ of }) => !(printed && of === 'ways[].yields')),
    ],
    way: {
      recipe: row.id,
      name: row.name,
      makes: row.makes,
      foods: [...new Set(lots.map((each) => each.food.name))],
      ...(row.form === undefined ? {} : { form: formName(row.form) }),
      keeps: row.keeps.map(keepingOf),
      processes: served.map(shown),
      needs: needsOf(row, brought),
      lacking: closed && onlyProcess ? [cannerLacking(canned.otherCanners), ...lacking] : lacking,
      ...(batches === undefined ? {} : { batches }),
      yields: kept?.pints === undefined || printed ? yieldsOf(row, lots, batches) : [{ jar: 'pint', ...kept.pints }],
      ...(kept?.mass === undefined ? {} : { mass: kept.mass }),
      ...(effort === undefined
        ? {}
        : { handsOn: minutes(effort.hands), clock: minutes(effort.clock), alone: minutes(effort.alone) }),
      mustKeep: mustKeepOf(row),
      scale: row.batch.scale,
    },
  };
}
