/** An invented day for the timeline: not a plan of any kitchen, but of the shape and size of one. */
import type { ScheduledDay } from '../../src/charts/index';
import type { DaySchedule, ScheduledTask, TaskKind, Window } from '../../src/plan/request/daySchedule';

type Uses = Readonly<Record<string, number>>;
type Line = readonly [
  kind: TaskKind,
  start: number,
  end: number,
  what: string,
  products: string | string[],
  uses: Uses,
];

const QUIET: readonly TaskKind[] = ['dry', 'freeze-dry', 'freeze'];

export function scheduleOf(lines: readonly Line[], windows: readonly Window[]): DaySchedule {
  const tasks = lines
    .map(
      ([kind, start, end, what, products, uses]): ScheduledTask => ({
        kind,
        what,
        forProducts: [products].flat(),
        startMinute: start,
        endMinute: end,
        uses: Object.entries(uses).map(([resource, used]) => ({ resource, used })),
        unattended: QUIET.includes(kind),
      }),
    )
    .sort((one, other) => one.startMinute - other.startMinute);
  const makespan = Math.max(0, ...tasks.filter(({ unattended }) => !unattended).map(({ endMinute: end }) => end));
  const lowerBound = Math.round(0.93 * makespan);
  return {
    startClock: 480,
    tasks,
    windows,
    resources: [...new Set(tasks.flatMap(({ uses }) => uses.map(({ resource }) => resource)))].map((resource) => ({
      resource,
    })),
    makespan,
    lowerBound,
    gap: makespan === 0 ? 0 : makespan / lowerBound - 1,
    allDoneMinute: Math.max(0, ...tasks.map(({ endMinute: end }) => end)),
  };
}

export const scheduled = (schedule: DaySchedule): ScheduledDay => ({
  feasible: true,
  invented: true,
  schedule,
  basis: [{ of: 'minutes of work and of cooking', kind: 'common-practice' }],
  cautions: [],
});

const halves = 'peach halves in quarts';
const jam = 'peach jam in half-pints';
const sauce = 'tomato sauce in pints';
const slices = 'apple slices, dried';
const leather = 'plum leather';
const packs = 'peach slices, frozen';
const powder = 'apple powder';

/** One load of peach halves: cut, heated, filled, canned. */
const load = (at: number, number: number, hands = 2): Line[] => [
  ['prepare', at, at + 28, 'marked-down peaches', halves, { hands }],
  ['cook', at + 28, at + 48, halves, halves, { '12 quart pot': 1, burners: 1 }],
  ['fill', at + 48, at + 58, halves, halves, { hands: 1, '12 quart pot': 1, burners: 1 }],
  ['can', at + 58, at + 118, `${halves}, load ${number}`, halves, { 'water-bath canner': 1, burners: 1 }],
];

/** A long day of two pairs of hands, one dryer and one freezer: 39 tasks. */
export const oneDay: ScheduledDay = scheduled(
  scheduleOf(
    [
      ['prepare', 0, 45, 'apples from the old tree', slices, { hands: 2 }],
      ['fill', 45, 60, slices, slices, { hands: 2 }],
      ['dry', 60, 600, slices, slices, { 'dryer trays': 6 }],
      ['heat canner', 78, 118, 'water-bath canner', halves, { 'water-bath canner': 1, burners: 1 }],
      ...load(60, 1),
      ...load(120, 2),
      ...load(180, 3),
      ...load(240, 4),
      ['prepare', 300, 330, 'tomatoes', sauce, { hands: 2 }],
      ['cook', 330, 390, sauce, sauce, { '8 quart pot': 1, burners: 1 }],
      ['fill', 390, 408, sauce, sauce, { hands: 1, '8 quart pot': 1, burners: 1 }],
      ['can', 418, 478, sauce, sauce, { 'water-bath canner': 1, burners: 1 }],
      ['prepare', 330, 360, 'plums', leather, { hands: 2 }],
      ['cook', 360, 380, leather, leather, { '12 quart pot': 1, burners: 1 }],
      ['fill', 380, 390, leather, leather, { hands: 1 }],
      ['dry', 390, 870, leather, leather, { 'dryer trays': 4 }],
      ['prepare', 360, 380, 'soft peaches', jam, { hands: 1 }],
      ['cook', 408, 453, jam, jam, { hands: 1, '8 quart pot': 1, burners: 1 }],
      ['fill', 453, 468, jam, jam, { hands: 2, '8 quart pot': 1 }],
      ['can', 478, 508, 'half-pint jars', [jam, sauce], { 'water-bath canner': 1, burners: 1 }],
      ['prepare', 410, 440, 'ripe peaches', packs, { hands: 1 }],
      ['fill', 440, 453, packs, packs, { hands: 1 }],
      ['freeze', 453, 1893, packs, packs, { freezer: 4 }],
      ['prepare', 470, 490, 'ripe peaches', packs, { hands: 2 }],
      ['fill', 490, 500, packs, packs, { hands: 1 }],
      ['freeze', 500, 1940, packs, packs, { freezer: 3 }],
      ['prepare', 490, 505, 'apple trimmings', powder, { hands: 1 }],
      ['fill', 505, 510, powder, powder, { hands: 1 }],
      ['dry', 510, 990, powder, powder, { 'dryer trays': 2 }],
      ['pack', 600, 612, slices, slices, { hands: 1 }],
    ],
    [{ day: 0, startMinute: 0, endMinute: 630 }],
  ),
);

/** Two days with a night between them. */
export const twoDays: ScheduledDay = scheduled(
  scheduleOf(
    [
      ['prepare', 0, 60, 'apples from the old tree', slices, { hands: 1 }],
      ['fill', 60, 90, slices, slices, { hands: 1 }],
      ['dry', 90, 630, slices, slices, { 'dryer trays': 6 }],
      ['heat canner', 100, 140, 'water-bath canner', halves, { 'water-bath canner': 1, burners: 1 }],
      ...load(90, 1, 1),
      ...load(200, 2, 1),
      ['prepare', 320, 360, 'plums', leather, { hands: 1 }],
      ['fill', 360, 380, leather, leather, { hands: 1 }],
      ['dry', 380, 860, leather, leather, { 'dryer trays': 6 }],
      ['pack', 1440, 1470, slices, slices, { hands: 1 }],
      ['prepare', 1470, 1530, 'tomatoes', sauce, { hands: 1 }],
      ['heat canner', 1540, 1580, 'water-bath canner', sauce, { 'water-bath canner': 1, burners: 1 }],
      ['cook', 1530, 1590, sauce, sauce, { '8 quart pot': 1, burners: 1 }],
      ['fill', 1590, 1610, sauce, sauce, { hands: 1, '8 quart pot': 1, burners: 1 }],
      ['can', 1610, 1670, sauce, sauce, { 'water-bath canner': 1, burners: 1 }],
      ['prepare', 1610, 1650, 'ripe peaches', packs, { hands: 1 }],
      ['freeze', 1650, 3090, packs, packs, { freezer: 3 }],
    ],
    [
      { day: 0, startMinute: 0, endMinute: 480 },
      { day: 1, startMinute: 1440, endMinute: 1740 },
    ],
  ),
);

/** Ten products, more than there are colours. */
export const tenProducts: ScheduledDay = scheduled(
  scheduleOf(
    Array.from({ length: 10 }, (_, place): Line => {
      const name = `product ${place + 1}`;
      return ['prepare', 40 * place, 40 * place + 40, name, name, { hands: 1 }];
    }),
    [{ day: 0, startMinute: 0, endMinute: 480 }],
  ),
);
