import { seeded } from '../../src/common/seeded';
import type { PlanDayInput } from '../../src/plan/index';

type Products = NonNullable<PlanDayInput['products']>;
/** A day whose products are named. */
export type NamedDay = PlanDayInput & { readonly products: Products };

/** Invented: a small day of 1 to 3 lots and 2 to 6 products of every make, as a cook would write it. */
export function randomDay(seed: number): NamedDay {
  const random = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const pick = <T>(from: readonly T[]): T => from[whole(0, from.length - 1)] as T;
  const unit = pick(['lb', 'kg'] as const);
  const kinds = ['peach', 'apple', 'plum', 'tomato', 'pear'] as const;
  const lots = Array.from({ length: whole(1, 3) }, () => {
    const raw = Math.round(between(4, unit === 'kg' ? 25 : 50));
    return {
      food: pick(kinds),
      raw: { value: raw, unit },
      ...(random() < 0.3 ? { ready: { value: raw * between(0.6, 0.95), unit } } : {}),
      ...(random() < 0.6 ? { price: { value: whole(300, 6000) / 100, unit: 'EUR' } } : {}),
    };
  });
  const recipes: Readonly<Record<(typeof kinds)[number], Products>> = {
    peach: [
      { make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart', syrup: 'light' },
      { make: 'jars', from: 'peaches', form: 'slices', pack: 'raw', jar: 'pint', syrup: 'medium' },
      { make: 'jam', from: 'peaches', jar: 'half-pint' },
      { make: 'frozen', from: 'peaches', form: 'slices' },
    ],
    apple: [
      { make: 'jars', from: 'apples', form: 'sauce', jar: 'pint' },
      { make: 'dried', from: 'apples', form: 'slices' },
      { make: 'powder', from: 'apples' },
      { make: 'jelly stock', from: 'apples' },
      { make: 'vinegar', from: 'apples' },
    ],
    plum: [
      { make: 'jars', from: 'plums', form: 'whole', pack: 'raw', jar: 'pint', syrup: 'heavy' },
      { make: 'leather', from: 'plums' },
    ],
    tomato: [
      { make: 'jars', from: 'tomatoes', form: 'crushed', jar: 'quart', method: 'weighted-gauge' },
      { make: 'jars', from: 'tomatoes', form: 'crushed', jar: 'pint', method: 'boiling-water' },
    ],
    pear: [
      { make: 'jars', from: 'pears', form: 'halves', pack: 'hot', jar: 'pint', method: 'boiling-water' },
      { make: 'freeze-dried', from: 'pears', form: 'slices', packSize: '4 oz' },
    ],
  };
  const products = Array.from({ length: whole(2, 6) }, () => ({
    ...pick(recipes[pick(lots).food]),
    worth: whole(4, 40) / 4,
    ...(random() < 0.3 ? { most: whole(3, 15) } : {}),
    ...(random() < 0.15 ? { least: whole(1, 3) } : {}),
  }));
  const aim = pick(['most worth', 'most worth', 'least waste', 'fewest hours'] as const);
  const { pantry, ...prices } = pricesOf(seeded(seed + 1_000_000));
  return {
    lots,
    kitchen: {
      elevation: { value: whole(0, 2500), unit: 'm' },
      hours: { value: whole(3, 12), unit: 'h' },
      hands: whole(1, 3),
      burners: whole(2, 4),
      pots: [{ volume: '12 quarts' }, { volume: '6 L', count: 2, fill: '60 %' }],
      canners: [
        { method: 'boiling-water', holds: { pint: 9, quart: 7, 'half-pint': 12 } },
        { method: 'weighted-gauge', holds: { pint: 9, quart: 7 } },
      ],
      jars: [
        { jar: 'pint', count: whole(5, 30), price: '1.90 EUR' },
        { jar: 'quart', count: whole(5, 20), price: '2.30 EUR' },
        { jar: 'half-pints', count: whole(5, 20) },
      ],
      lids: { count: whole(15, 50), price: '0.37 EUR' },
      dryer: { trays: whole(2, 9), trayArea: '1300 cm2' },
      freezeDryer: { trays: 4, trayArea: '900 cm2', ice: '3 kg' },
      freezer: { room: { value: whole(4, 30), unit: 'L' }, volume: '200 L' },
      pantry: [{ item: 'sugar', amount: '2 kg', price: '2.10 EUR' }, ...pantry],
      ...prices,
    },
    products,
    aim: aim === 'fewest hours' && !products.some(({ least = 0 }) => least > 0) ? 'most worth' : aim,
  };
}

/** What is drawn from a stream of its own, so that a seed gives the same day otherwise: what else has a price. */
function pricesOf(random: () => number) {
  const euros = (low: number, high: number) => ({
    value: Math.round(100 * (low + (high - low) * random())) / 100,
    unit: 'EUR',
  });
  const sometimes = <T>(chance: number, value: T): T | Record<string, never> => (random() < chance ? value : {});
  const acid = random() < 0.5 ? ('bottled lemon juice' as const) : ('citric acid' as const);
  return {
    pantry: [{ item: acid, amount: '400 g' as const, ...sometimes(0.8, { price: euros(2, 9) }) }],
    bags: { ...sometimes(0.5, { count: 4 + Math.floor(30 * random()) }), ...sometimes(0.7, { price: euros(0, 0.6) }) },
    utilities: {
      stove: random() < 0.5 ? ('gas' as const) : ('electric' as const),
      ...sometimes(0.8, { electricity: euros(0.1, 0.45) }),
      ...sometimes(0.8, { gas: euros(1, 4) }),
      ...sometimes(0.4, { dryerPower: { value: 500, unit: 'W' as const } }),
      ...sometimes(0.4, { freezeDryerPower: { value: 1, unit: 'kW' as const } }),
    },
    ...sometimes(0.4, { wage: euros(5, 25) }),
  };
}
