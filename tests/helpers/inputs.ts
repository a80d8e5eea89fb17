/** Good arguments of every public function: those of the check vectors, and one by hand where a function has none. */
import { readdirSync, readFileSync } from 'node:fs';
import { planDay } from '../../src/plan/index';
import type { VectorFile } from '../vectors/schema';
import { exampleDay } from './plans';

const shared = new URL('../../shared/', import.meta.url);
let planned: ReturnType<typeof planDay> | undefined;
/** A whole plan, made once. */
const plan = () => {
  planned ??= planDay(exampleDay('day.json'));
  return structuredClone(planned);
};
/** A load of peaches in a boiling-water canner. */
export const CANNING = {
  food: 'peach',
  form: 'halves',
  pack: 'hot',
  jar: 'quart',
  method: 'boiling-water',
  elevation: '500 ft',
  jars: 7,
  waterVolume: '12 quarts',
  burnerPower: '2400 W',
};
const tray = [
  { time: '0 h', mass: '1000 g' },
  { time: '2 h', mass: '688 g' },
  { time: '4 h', mass: '461 g' },
];
const prior = { low: 6, likely: 9, high: 12 };
const record = { date: '2026-08-14', name: 'jam', lots: [{ food: 'plum', raw: '5 kg' }] };

/** Arguments of functions that no vector calls; a function that takes none has an empty list. */
const BY_HAND: Readonly<Record<string, () => readonly unknown[]>> = {
  findFood: () => ['string beans'],
  foods: () => [{ kind: 'fruit' }],
  forms: () => [{ food: 'peaches' }],
  whatIsKnown: () => [{ food: 'peaches' }],
  sources: () => [{ ids: ['usda-cghc-2015'] }],
  checkSchedule: () => [plan()],
  planProblems: () => [exampleDay('day.json')],
  allocationChart: () => [{ plan: plan() }],
  costChart: () => [{ plan: plan() }],
  timelineChart: () => [{ plan: plan() }],
  runSheet: () => [plan()],
  boilingSolidsChart: () => [{ elevation: '3400 ft' }],
  dryingCurveChart: () => [{ weighings: tray, stopWeight: '188 g', model: 'lewis', scaleError: '5 g' }],
  isothermChart: () => [{ food: 'kiwifruit', temperature: '30 degC', batch: { moisture: '6 %' } }],
  learningChart: () => [
    { what: 'drying time of apple rings', unit: 'h', before: prior, after: prior, observed: [7, 72], asidePlaces: [1] },
  ],
  processTimeChart: () => [{ food: 'peaches', form: 'halves', pack: 'hot', jar: 'quart' }],
  powder: () => [{ trimmings: '2 kg', moisture: '88 %', loss: '3 %' }],
  moistureAfterStorage: () => [
    { dried: '500 g', moisture: '2 %', bag: { area: '0.12 m2', transmission: 0.5, time: '365 days' } },
  ],
  trayLoad: () => [{ area: '1 ft2', thickness: '1/4 in', ready: '10 lb' }],
  loadTimeline: () => [CANNING],
  canningRules: () => [{ topic: 'pressure canner' }],
  processesFor: () => [{ food: 'rhubarb' }],
  labelFields: () => [
    {
      name: 'Peach jam',
      net: '18 oz',
      ingredients: [{ name: 'sugar', mass: '1.2 kg' }],
      made: '2026-08-14',
      batchOfDay: 1,
    },
  ],
  recordRules: () => [{ topic: 'acidified food', made: '2026-08-14' }],
  batchRecord: () => [record],
  waysToKeep: () => [
    {
      lots: [{ food: 'peach', raw: '40 lb' }],
      kitchen: { elevation: '4200 ft', canners: [{ method: 'boiling-water' }], jars: [{ jar: 'pint', count: 24 }] },
    },
  ],
  ownProcess: () => [
    {
      name: 'plum sauce',
      citation: 'Our county cookbook, 1998, page 41',
      foods: ['plum'],
      form: 'sauce',
      jar: 'pint',
      method: 'boiling-water',
      minutes: 10,
      headspace: '1/2 in',
      elevation: '4200 ft',
    },
  ],
  mixture: () => [
    {
      parts: [
        { food: 'peach', mass: '2 kg' },
        { food: 'banana', mass: '1 kg' },
      ],
    },
  ],
  call: () => ['convert', ['1 cup', 'tbsp']],
  catalogue: () => [{ name: 'fillJar' }],
  check: () => ['testedProcess', { food: 'peach', jar: 'pint' }],
  choices: () => ['testedProcess', 'method', { food: 'peach', form: 'halves' }],
  parseQuantity: () => ['1 1/2 cups', 'volume'],
  formatQuantity: () => ['1.51 cup', { fraction: 8 }],
};

/** Arguments of another shape, which no vector gives. */
const ALSO: Readonly<Record<string, () => readonly unknown[]>> = {
  boilingTemperature: () => [{ temperature: '203 degF' }],
  batchRecord: () => [JSON.stringify({ version: 2, ...record })],
  canningRules: () => [{ topic: 'holding cut fruit' }],
  learnFromRecords: () => [{ prior, observed: [7, 7.5, 7.2, 7.4, 72] }],
  moistureByWeighing: () => [{ weighings: tray }],
  waterActivityOf: () => [
    { waterActivity: 0.5, startTemperature: '20 degC', targetTemperature: '30 degC', heatOfSorption: 5 },
  ],
};

/** Up to `most` different lists of arguments of each function, by its name. */
export function goodArguments(most: number): Map<string, readonly (readonly unknown[])[]> {
  const found = new Map<string, Map<string, readonly unknown[]>>();
  for (const file of readdirSync(shared).filter((name) => name.endsWith('.json'))) {
    const { checks } = JSON.parse(readFileSync(new URL(file, shared), 'utf8')) as VectorFile;
    for (const { call, input, expect } of checks) {
      const list = found.get(call) ?? new Map<string, readonly unknown[]>();
      found.set(call, list);
      if (typeof expect === 'object' && expect !== null && 'error' in expect) continue;
      const args = Array.isArray(input) ? input : [input];
      // alike in shape, alike in branch: one of each shape is enough
      const shape = `${file} ${JSON.stringify(args).replace(/"(?:[^"\\]|\\.)*"(?!:)|-?[\d.e+-]+/g, '_')}`;
      if (list.size < most && !list.has(shape)) list.set(shape, args);
    }
  }
  for (const [name, args] of Object.entries(BY_HAND)) found.set(name, new Map([['by hand', args()]]));
  for (const [name, args] of Object.entries(ALSO)) found.get(name)?.set('another shape', args());
  return new Map([...found].map(([name, list]) => [name, [...list.values()]]));
}
