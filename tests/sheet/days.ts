/** Plans to print: days of every kind, each planned once. */
import { seeded } from '../../src/common/seeded';
import { type DayPlan, type FeasibleDay, type PlanDayInput, planDay } from '../../src/plan/index';
import { exampleDay } from '../helpers/plans';

const kitchen = {
  elevation: '900 ft',
  hours: '9 h',
  hands: 2,
  burners: 3,
  pots: [{ volume: '12 quarts' }],
  canners: [{ method: 'boiling-water', holds: { quart: 7, pint: 9, 'half-pint': 12 } }],
  jars: [
    { jar: 'quart', count: 14 },
    { jar: 'pint', count: 27 },
    { jar: 'half-pint', count: 24 },
  ],
} as const satisfies PlanDayInput['kitchen'];

const DAYS = {
  'the example': () => exampleDay('day.json'),
  'a metric day': () => exampleDay('day-metric.json'),
  'two days under pressure': () => ({
    lots: [
      { food: 'green bean', raw: '30 lb' },
      { food: 'carrot', raw: '25 lb' },
    ],
    kitchen: {
      ...kitchen,
      elevation: '4,200 ft',
      hours: ['7 h', '6 h'],
      start: '9:00',
      hands: ['cook', 'helper'],
      breaks: [{ at: '12:30', for: '30 min' }],
      canners: [{ method: 'weighted-gauge', holds: { quart: 7, pint: 16 } }],
      freezer: { room: '2 ft3' },
    },
    products: [
      { make: 'vegetables in jars', from: 'green bean', jar: 'pint', worth: 3 },
      { make: 'vegetables in jars', from: 'carrot', jar: 'pint', worth: 3 },
      { make: 'frozen', from: 'green bean', worth: 1 },
    ],
  }),
  'drying only': () => ({
    lots: [{ food: 'apple', raw: '20 lb' }],
    kitchen: { elevation: '900 ft', hours: '5 h', dryer: { trays: 8, trayArea: '200 in2' } },
    products: [{ make: 'dried', from: 'apples', form: 'slices' }],
  }),
  'no products named': () => ({
    lots: [{ food: 'strawberry', raw: '16 quarts', price: '24 USD', sound: 0.86, keepFresh: '1 quart' }],
    kitchen: {
      ...kitchen,
      hands: 1,
      pots: [{ volume: '16 quarts' }],
      dryer: { trays: 6, trayArea: '160 in2' },
      freezeDryer: { trays: 4, trayArea: '110 in2', ice: '8 lb', busyUntil: '6 h' },
      freezer: { room: '1 ft3' },
    },
  }),
  'a crock': () => ({ lots: [{ food: 'cabbage', raw: '25 lb' }], kitchen: { ...kitchen, hands: 1 } }),
  'evenings alike': () => ({
    lots: [{ food: 'plum', raw: '20 lb' }],
    kitchen: {
      elevation: '250 ft',
      hours: ['3 h', '3 h', '3 h', '3 h'],
      start: '18:00',
      dryer: { trays: 4, trayArea: '200 in2' },
    },
    products: [{ make: 'leather', from: 'plum' }],
  }),
  'more than there is': () => ({
    lots: [{ food: 'peach', raw: '20 lb' }],
    kitchen,
    products: [{ make: 'fruit in jars', from: 'peaches', form: 'halves', jar: 'quart', least: 30 }],
  }),
} as const satisfies Record<string, () => PlanDayInput>;

export type Day = keyof typeof DAYS;
export const DAY_NAMES = Object.keys(DAYS) as Day[];
export const FEASIBLE_NAMES = DAY_NAMES.filter((name) => name !== 'more than there is');

const planned = new Map<Day, DayPlan>();
/** The plan of a day of this name. */
export function planOf(name: Day): DayPlan {
  const plan = planned.get(name) ?? planDay(DAYS[name]());
  planned.set(name, plan);
  return structuredClone(plan);
}
export function feasiblePlan(name: Day): FeasibleDay {
  const plan = planOf(name);
  if (!plan.feasible) throw new Error(plan.reason.text);
  return plan;
}

/** Invented: a small day, its lots, kitchen and products by chance. */
export function randomSheetDay(seed: number): PlanDayInput {
  const random = seeded(seed);
  const whole = (low: number, high: number) => low + Math.floor((high - low + 1) * random());
  const pick = <T>(from: readonly T[]): T => from[whole(0, from.length - 1)] as T;
  const unit = pick(['lb', 'kg'] as const);
  const foods = ['peach', 'apple', 'plum', 'tomato', 'green bean', 'strawberry', 'cabbage'] as const;
  const wanted = {
    peach: [
      { make: 'fruit in jars', from: 'peach', jar: 'quart' },
      { make: 'jam', from: 'peach', jar: 'half-pint' },
    ],
    apple: [
      { make: 'dried', from: 'apple', form: 'slices' },
      { make: 'powder', from: 'apple' },
    ],
    plum: [
      { make: 'leather', from: 'plum' },
      { make: 'fruit in jars', from: 'plum', jar: 'pint' },
    ],
    tomato: [{ make: 'tomatoes in jars', from: 'tomato', jar: 'pint' }],
    'green bean': [
      { make: 'frozen', from: 'green bean' },
      { make: 'vegetables in jars', from: 'green bean', jar: 'pint' },
    ],
    strawberry: [
      { make: 'jam', from: 'strawberry' },
      { make: 'freeze-dried', from: 'strawberry' },
    ],
    cabbage: [{ make: 'ferment', from: 'cabbage' }],
  } as const;
  const chosen = Array.from({ length: whole(1, 3) }, () => pick(foods));
  const money = random() < 0.5 ? { price: { value: whole(300, 4000) / 100, unit: 'EUR' } } : {};
  return {
    ...(random() < 0.3 ? { aim: 'least waste' as const } : {}),
    lots: [...new Set(chosen)].map((food) => ({
      food,
      raw: { value: whole(3, unit === 'kg' ? 12 : 30), unit },
      ...money,
    })),
    kitchen: {
      ...kitchen,
      elevation: { value: whole(0, 2500), unit: 'm' },
      hours: random() < 0.2 ? ['5 h', '4 h'] : { value: whole(3, 10), unit: 'h' },
      start: pick(['6:30', '8 am', '13:00', '20:00'] as const),
      hands: random() < 0.3 ? ['cook', 'helper'] : whole(1, 3),
      canners: [
        ...kitchen.canners,
        { method: pick(['weighted-gauge', 'dial-gauge'] as const), holds: { pint: 9, quart: 7 } },
      ],
      ...(random() < 0.7 ? { dryer: { trays: whole(2, 10), trayArea: '200 in2' as const } } : {}),
      ...(random() < 0.4 ? { freezeDryer: { trays: 4, trayArea: '110 in2' as const, ice: '8 lb' as const } } : {}),
      ...(random() < 0.7 ? { freezer: { room: '2 ft3' as const } } : {}),
    },
    products: [...new Set(chosen)].flatMap((food) => wanted[food].map((each) => ({ ...each, worth: whole(1, 9) }))),
  };
}
