import { StillroomError } from '../../errors/StillroomError';
import { fillJar } from '../../jars/fillJar';
import { ruleFigures } from '../../process/canningRules';
import { loadOf } from '../../process/loadTimeline';
import { type TestedProcess, testedProcess } from '../../process/testedProcess';
import { byEnds } from '../../quantity/range';
import type { Quantity, Range } from '../../quantity/types';
import type { Basis } from '../../sources/basis';
import type { NotTested } from '../../sources/no';
import { customary } from '../figures/customary';
import type { Canning } from '../request/activity';
import type { Kitchen, Wanted } from '../request/planInput';
import { type InStock, jarsOf, LIDS } from '../request/stock';
import { burnerOf, inKilowattHours } from './energyTaken';
import type { Product } from './making';
import { type Day, type JarsDescribed, type LeftOutProduct, leftOut, volumeOf } from './making';
import { ownProcessIn } from './ownBook';
import type { PlanProcess } from './planProcess';

type Method = NonNullable<Wanted['method']>;

/** A process that this kitchen can run. */
export interface Runnable {
  readonly basis: readonly Basis[];
  readonly process: PlanProcess;
  readonly canners: Canning['canners'];
  readonly loadMinutes: Range<number>;
}

/** Water in a canner where the kitchen names none. */
const waterIn = (method: Method): Quantity<'volume'> => ({ value: customary(CANNERS[method]), unit: 'quart' });
const CANNERS: Readonly<Record<Method, string>> = {
  'boiling-water': 'boiling-water-canner',
  'atmospheric-steam': 'steam-canner',
  'dial-gauge': 'pressure-canner',
  'weighted-gauge': 'pressure-canner',
};
/** The water that hot and raw packed jars are put into, as the guides print it. */
const preheated = (pack: string): Quantity<'temperature'> => ({
  value: ruleFigures(pack === 'raw' ? 'preheat-raw' : 'preheat-hot').low,
  unit: 'degF',
});
/** Whether jars of this size are in stock; where no stock is named, it is not limited. */
export const hasJars = ({ jars }: Kitchen, jar: string): boolean => jars?.some((stock) => stock.jar === jar) ?? true;

/** What one jar takes of the stock. */
export const jarAndLid = (jar: string): InStock[] => [
  { stock: jarsOf(jar), amount: 1 },
  { stock: LIDS, amount: 1 },
];

/** Jars that a product may go into: the one that was asked for, or those of the kitchen, the largest stock first. */
function jarsTried({ kitchen }: Day['request'], { wanted, row }: Product): readonly string[] {
  if (wanted.own !== undefined) return [wanted.own.jar.name];
  if (wanted.jar !== undefined) return [wanted.jar];
  const printed = (row.yields ?? []).map(({ jar }) => jar);
  const held = (kitchen.jars ?? []).filter(({ count }) => count > 0);
  const sizes = (kitchen.canners ?? []).flatMap(({ holds }) => Object.keys(holds));
  const all = held.length > 0 ? [...held].sort((one, other) => other.count - one.count).map(({ jar }) => jar) : sizes;
  // the size that the page prints its yield in comes first
  return [...new Set([...all.filter((jar) => printed.includes(jar)), ...all])];
}

/** The tested process of a recipe in a jar and a canner; hot where the page prints both packs and the cook names none. */
function processOf(day: Day, product: Product, jar: string, method: Method): PlanProcess | LeftOutProduct {
  const { wanted } = product;
  if (wanted.own !== undefined) return ownProcessIn(day, product, wanted.own);
  const found = printedProcess(day, product, jar, method);
  if (found.tested) return found;
  const [first, second = first] = found.instead.map(({ text }) => text);
  const instead = first === second ? first : `${first}, or ${second}`;
  return leftOut(wanted, { code: 'no-tested-process', text: found.reason.text, instead: instead ?? 'freeze it' });
}

function printedProcess(
  day: Day,
  { wanted, row, food }: Product,
  jar: string,
  method: Method,
): TestedProcess | NotTested {
  const question = { food: food.name, recipe: row.id, jar, method, elevation: day.request.kitchen.elevation };
  try {
    return testedProcess({ ...question, ...(wanted.pack === undefined ? {} : { pack: wanted.pack }) });
  } catch (error) {
    if (!(error instanceof StillroomError) || error.path !== 'pack' || wanted.pack !== undefined) throw error;
    return testedProcess({ ...question, pack: 'hot' });
  }
}

/** Finds the tested process that a canner of this kitchen can run; or the reason why there is none. */
export function runnable(day: Day, product: Product): Runnable | LeftOutProduct {
  const { wanted } = product;
  const { kitchen } = day.request;
  const canners = (kitchen.canners ?? []).flatMap((canner) => Array.from({ length: canner.count ?? 1 }, () => canner));
  const only = wanted.own?.method ?? wanted.method;
  const methods = [...new Set<Method>(only === undefined ? canners.map(({ method }) => method) : [only])];
  if (methods.length === 0)
    return leftOut(wanted, {
      code: 'no-canner',
      text: 'the kitchen has no canner',
      instead: `${RACK}; or freeze or dry it`,
    });
  const jars = jarsTried(day.request, product);
  if (jars.length === 0)
    return leftOut(wanted, { code: 'no-jar-size', text: 'no jar size was named', instead: 'name one, such as "pint"' });
  const sizes = jars.join(' or ');
  const stocked = jars.filter((jar) => hasJars(kitchen, jar));
  if (stocked.length === 0) {
    const text = `no ${sizes} jars are in stock`;
    return leftOut(wanted, { code: 'no-jars', text, instead: 'name the jars you have, or another size' });
  }
  let refused: LeftOutProduct | undefined;
  for (const jar of stocked) {
    for (const method of methods) {
      const process = processOf(day, product, jar, method);
      if ('wanted' in process) {
        refused ??= process;
        continue;
      }
      const able = cannersAble(day, process, canners);
      const [first] = able;
      if (first !== undefined) return { process, canners: able, loadMinutes: first.range, basis: first.basis };
      refused ??= leftOut(wanted, noCanner(canners, method, jar));
    }
  }
  return refused as LeftOutProduct;
}

type CannerRow = NonNullable<Kitchen['canners']>[number];

/** The canners that can run a process, with the minutes and the energy of a load in each. */
function cannersAble({ request: { kitchen } }: Day, process: PlanProcess, canners: readonly CannerRow[]) {
  const { jar, method, pack } = process;
  return canners.flatMap((canner, index) => {
    const jars = Object.entries(canner.holds).find(([size]) => size === jar)?.[1];
    if (canner.method !== method || jars === undefined) return [];
    const where = { jar, elevation: kitchen.elevation };
    const lit = { jars, waterVolume: canner.waterVolume ?? waterIn(method), burnerPower: burnerOf(kitchen) };
    // the canner heats up while the food is prepared, and a second load starts hot
    const load = loadOf(process, where, { ...lit, waterTemperature: preheated(pack) });
    const cold = loadOf(process, where, lit);
    const warmUp = cold.steps.find(({ what }) => what === 'heat the water')?.minutes.high ?? 0;
    return [
      {
        canner: index,
        jars,
        minutes: Math.ceil(load.totalMinutes.high),
        // boiling water boils on by itself; a gauge is watched
        ...(method === 'boiling-water' ? { throughBreaks: true } : {}),
        warmUp: Math.ceil(warmUp),
        energyPerLoad: inKilowattHours(load.energy),
        energyToWarmUp: byEnds(
          inKilowattHours(cold.energy),
          inKilowattHours(load.energy),
          (first, each) => first - each,
        ),
        range: load.totalMinutes,
        basis: load.basis.map((line) => ({ ...line, of: 'energy', note: line.note ?? line.of })),
      },
    ];
  });
}

const RACK = 'a pot with a rack, deep enough for 1 inch of water over the jars, is a canner: say `rack: true` of it';

/** Why no canner of a kind takes a jar, and what to do. */
function noCanner(canners: readonly CannerRow[], method: Method, jar: string) {
  const held = heldBy(canners, method);
  if (held === undefined) {
    const text = `the kitchen has no ${method} canner`;
    const instead =
      method === 'boiling-water' ? `${RACK}; or freeze or dry it` : 'leave the method out, or freeze or dry it';
    return { code: 'no-canner', text, instead };
  }
  const text = `no ${method} canner here holds ${jar} jars`;
  return { code: 'no-canner-for-jar', text, instead: `say in \`holds\` how many it takes, or use ${held}` };
}

/** The jars that canners of a kind hold; nothing without such a canner. */
function heldBy(canners: readonly CannerRow[], method: Method): string | undefined {
  const held = canners.flatMap((canner) => (canner.method === method ? Object.keys(canner.holds) : []));
  return held.length === 0 ? undefined : `${[...new Set(held)].join(' or ')} jars`;
}

export function jarsDescribed(
  day: Day,
  process: PlanProcess,
  loadMinutes: Range<number>,
  netMass?: Quantity<'mass'>,
): JarsDescribed {
  const { acid } = process;
  const fill = fillJar({ jar: process.jar, headspace: process.headspace });
  return {
    jar: process.jar,
    headspace: process.headspace,
    fillVolume: volumeOf(day, fill.fillVolume),
    ...(netMass === undefined ? {} : { netMass }),
    pack: process.pack,
    method: process.method,
    minutes: process.minutes,
    ...(process.pressure === undefined ? {} : { pressure: process.pressure }),
    ...(acid === undefined ? {} : { acidToAdd: acid.text, acidGoesInto: acid.where }),
    sterilizeJars: process.sterilizeJars,
    ...(process.own === undefined ? {} : { own: process.own }),
    loadMinutes,
  };
}

export const canningOf = ({ process, canners }: Runnable): Canning => ({
  key: [process.method, process.jar, `${process.minutes} min`, process.pressure?.value ?? ''].join(' ').trim(),
  jar: process.jar,
  canners,
});
