import { fillJar } from '../../jars/fillJar';
import { ruleFigures } from '../../process/canningRules';
import { loadTimeline } from '../../process/loadTimeline';
import { type TestedProcess, type TestedProcessInput, testedProcess } from '../../process/testedProcess';
import { byEnds } from '../../quantity/range';
import type { Quantity, Range } from '../../quantity/types';
import type { Basis } from '../../sources/basis';
import { customary } from '../customary';
import type { Canning } from '../request/activity';
import type { Kitchen, Wanted } from '../request/planInput';
import { type InStock, jarsOf, LIDS } from '../request/stock';
import { burnerOf, inKilowattHours } from './energyTaken';
import { type Day, type JarsDescribed, volumeOf } from './making';

type Method = NonNullable<Wanted['method']>;

/** A process that this kitchen can run. */
export interface Runnable {
  readonly basis: readonly Basis[];
  readonly process: TestedProcess;
  readonly canners: Canning['canners'];
  readonly loadMinutes: Range<number>;
}

/** Why no canner here can run a process, and what to do instead. */
interface Refused {
  readonly code: string;
  readonly reason: string;
  readonly instead: string;
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

/** Finds the tested process that a canner of this kitchen can run; or the reason why there is none. */
export function runnable(
  day: Day,
  wanted: Wanted,
  food: string,
  form: string | undefined,
  jar: string,
): Runnable | Refused {
  const { kitchen } = day.request;
  const canners = (kitchen.canners ?? []).flatMap((canner) => Array.from({ length: canner.count ?? 1 }, () => canner));
  const methods = [
    ...new Set<Method>(wanted.method === undefined ? canners.map(({ method }) => method) : [wanted.method]),
  ];
  if (methods.length === 0)
    return { code: 'no-canner', reason: 'the kitchen has no canner', instead: 'freeze or dry it' };
  let refused: Refused | undefined;
  for (const method of methods) {
    const question: TestedProcessInput = { food, form, pack: wanted.pack, jar, method, elevation: kitchen.elevation };
    const process = testedProcess(question);
    if (!process.tested) {
      const [first, second = first] = process.instead.map(({ text }) => text);
      const instead = first === second ? first : `${first}, or ${second}`;
      refused ??= { code: 'no-tested-process', reason: process.reason.text, instead: instead ?? 'freeze it' };
      continue;
    }
    const able = canners.flatMap((canner, index) => {
      const jars = Object.entries(canner.holds).find(([size]) => size === jar)?.[1];
      if (canner.method !== method || jars === undefined) return [];
      const lit = {
        ...question,
        jars,
        waterVolume: canner.waterVolume ?? waterIn(method),
        burnerPower: burnerOf(kitchen),
      };
      // the canner heats up while the food is prepared, and a second load starts hot
      const warm = { ...lit, waterTemperature: preheated(process.pack) };
      const load = loadTimeline(warm);
      const cold = loadTimeline(lit);
      if (!load.tested || !cold.tested) return [];
      const warmUp = cold.steps.find(({ what: step }) => step === 'heat the water')?.minutes.high ?? 0;
      return [
        {
          canner: index,
          jars,
          minutes: Math.ceil(load.totalMinutes.high),
          warmUp: Math.ceil(warmUp),
          energyPerLoad: inKilowattHours(load.energy),
          energyToWarmUp: byEnds(
            inKilowattHours(cold.energy),
            inKilowattHours(load.energy),
            (first, load) => first - load,
          ),
          range: load.totalMinutes,
          basis: load.basis.map((line) => ({ ...line, of: 'energy', note: line.note ?? line.of })),
        },
      ];
    });
    const [first] = able;
    if (first !== undefined) return { process, canners: able, loadMinutes: first.range, basis: first.basis };
    refused ??= {
      code: 'no-canner-for-jar',
      reason: `no ${method} canner here holds ${jar} jars`,
      instead: 'name a canner that does, or use another jar',
    };
  }
  return refused as Refused;
}

export function jarsDescribed(
  day: Day,
  process: TestedProcess,
  loadMinutes: Range<number>,
  netMass?: Quantity<'mass'>,
): JarsDescribed {
  const acid = process.acid?.text;
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
    ...(acid === undefined ? {} : { acid }),
    sterilizeJars: process.sterilizeJars,
    loadMinutes,
  };
}

export const canningOf = ({ process, canners }: Runnable): Canning => ({
  key: [process.method, process.jar, `${process.minutes} min`, process.pressure?.value ?? ''].join(' ').trim(),
  jar: process.jar,
  canners,
});
