import { seeded } from '../../../src/common/seeded';
import type { Window } from '../../../src/plan/request/daySchedule';
import type { CanStep, Job, LaterLoad, Means, Portion } from '../../../src/plan/schedule/job';

/** What is scarce, by turns. */
export const KINDS = [
  'one pot',
  'small pot, big canner',
  'shared loads',
  'one pair of hands',
  'breaks',
  'busy machines',
  'cooked together',
  'the pot is the canner',
] as const;

/** Invented: a kitchen that is short of something, its hours with breaks or over two days, and 2 to 8 jobs of every kind. */
export function randomWork(seed: number): { jobs: Job[]; means: Means; windows: Window[] } {
  const random = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const kind = KINDS[seed % KINDS.length] as (typeof KINDS)[number];
  const hands = kind === 'one pair of hands' ? 1 : whole(1, 3);
  const pots = kind === 'one pot' || kind === 'the pot is the canner' ? 1 : whole(1, 3);
  const canners = kind === 'cooked together' ? 2 : whole(1, 2);
  const isBusy = kind === 'busy machines';
  const means: Means = {
    start: 480,
    hands,
    burners: whole(1, 4),
    pots: Array.from({ length: pots }, (_, index) => ({ label: `pot ${index}`, litres: between(5, 9) })),
    canners: Array.from({ length: canners }, (_, index) => `canner ${index}`),
    ...(kind === 'the pot is the canner' ? { vessels: [0] } : {}),
    trays: whole(4, 12),
    freezerKg: 30,
    ...(isBusy ? { busy: { dryer: whole(1, 400), freezeDryer: whole(1, 900), canners: [whole(1, 200)] } } : {}),
    ...(random() < 0.5 ? { names: ['cook', 'helper', 'neighbor'].slice(0, hands) } : {}),
  };
  const largest = Math.max(...means.pots.map(({ litres }) => litres));
  const cookOf = (stirred: boolean, litres: number) => ({ minutes: whole(5, 60), litres, stirred });
  const portion = (product: string, count: number, cooked: boolean, soak = 0): Portion => ({
    product,
    what: 'fruit',
    raw: { value: 5, unit: 'kg' },
    filled: { count, unit: 'jar' },
    prepare: between(2, 50),
    fill: between(0.3, 1.2) * count,
    ...(soak > 0 ? { soak } : {}),
    ...(cooked ? { cook: cookOf(random() < 0.3, between(1, largest)) } : {}),
    drops: [],
  });
  const step = (count: number): CanStep => ({
    kind: 'can',
    jars: { count, unit: 'jar' },
    lift: 0.5 * count,
    canners: means.canners.map((_, canner) => ({
      canner,
      minutes: whole(30, 80),
      warmUp: whole(5, 45),
      ...(random() < 0.5 ? { throughBreaks: true } : {}),
    })),
  });
  const makers: readonly ((product: string) => Job)[] = [
    (product) => {
      const soak = random() < 0.3 ? whole(30, 240) : 0;
      const cooked = random() < 0.6;
      // products of one process, or the batches of one in small pots
      const names = kind === 'shared loads' ? [product, `${product} too`] : Array(whole(1, 2)).fill(product);
      const counts = names.map(() => whole(2, kind === 'small pot, big canner' ? 9 : 5));
      return {
        portions: names.map((name, index) => portion(name, counts[index] as number, cooked, soak)),
        into: step(counts.reduce((sum, each) => sum + each, 0)),
        needs: [],
      };
    },
    (product) => ({
      portions: [portion(product, 3, random() < 0.5)],
      into: {
        kind: 'dry',
        units: { count: 3, unit: 'tray' },
        amount: whole(1, 4),
        minutes: 60 * whole(4, 12),
        pack: 5,
      },
      needs: [],
    }),
    (product) => ({
      portions: [portion(product, 3, false)],
      into: { kind: 'freeze-dry', units: { count: 3, unit: 'tray' }, amount: 1, minutes: 60 * whole(20, 30), pack: 5 },
      needs: [],
    }),
    (product) => ({
      portions: [portion(product, 4, false)],
      into: { kind: 'freeze', units: { count: 4, unit: 'bag' }, amount: 3, minutes: 1440, pack: 0 },
      needs: [],
    }),
    (product) => ({
      portions: [portion(product, 1, false, random() < 0.5 ? 60 : 0)],
      into: {
        kind: random() < 0.5 ? 'ferment' : 'stand',
        units: { count: 1, unit: 'crock' },
        amount: 0,
        minutes: 30_000,
        pack: 0,
      },
      needs: [],
    }),
  ];
  const jobs = Array.from({ length: whole(2, 8) }, (_, index): Job => {
    const product = `product ${index}`;
    if (kind === 'cooked together' && index < 2) return togetherOf(product);
    return (makers[random() < 0.6 ? 0 : whole(1, makers.length - 1)] as (typeof makers)[number])(product);
  });
  /** One pot for two or three loads, or a pot for each. */
  function togetherOf(product: string): Job {
    const jars = Array.from({ length: whole(2, 3) }, () => whole(3, 6));
    const all = jars.reduce((sum, each) => sum + each, 0);
    const apart = jars.map((count): Job => {
      const each = portion(product, count, false);
      return {
        portions: [{ ...each, prepare: 2 * count, cook: cookOf(false, (largest * count) / all) }],
        into: step(count),
        needs: [],
      };
    });
    const [first, ...others] = apart as [Job, ...Job[]];
    const [own] = first.portions as [Portion];
    return {
      portions: [{ ...own, prepare: 2 * all, cook: cookOf(false, largest) }],
      ...(first.into === undefined ? {} : { into: first.into }),
      needs: [],
      together: {
        hot: 60,
        more: others.map(({ portions, into }): LaterLoad => {
          const [{ filled, fill }] = portions as readonly [Portion];
          return { filled, fill, into: into as CanStep };
        }),
        apart,
      },
    };
  }
  const day = (index: number, minutes: number): Window[] => {
    const from = 1440 * index;
    const rest = from + whole(150, Math.max(151, minutes - 120));
    return kind === 'breaks' || random() < 0.2
      ? [
          { day: index, startMinute: from, endMinute: rest },
          { day: index, startMinute: rest + whole(15, 60), endMinute: from + minutes + 60 },
        ]
      : [{ day: index, startMinute: from, endMinute: from + minutes }];
  };
  const minutes = 60 * whole(6, 12);
  return { jobs, means, windows: random() < 0.3 ? [...day(0, minutes), ...day(1, 480)] : day(0, minutes) };
}
