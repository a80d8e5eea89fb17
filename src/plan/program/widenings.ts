import { BAGS, FREEZER_LOAD, FREEZER_ROOM, jarsOf, LIDS, type Stock } from '../request/stock';
import { type DayProgram, keyOf, type Resource } from './decisions';
import type { More, Widening } from './limits';

/** What the widened things of a kitchen are called, and how many there are. */
export interface Labels {
  readonly lots: readonly string[];
  readonly canners: readonly string[];
  readonly hands: number;
  readonly burners: number;
  readonly minutes: number;
  readonly pots: number;
  readonly vessels?: readonly (number | undefined)[];
}

const HANDS: Resource = { of: 'hands' };
const BURNERS: Resource = { of: 'burners' };
const more = (resource: Resource, by: number): More => ({ resource, by });
const stockOf = (stock: Stock): Resource => ({ of: 'stock', stock });

/** A widening of one resource alone. */
const only = (what: string, oneMore: string, main: Resource, by: number): Widening => ({
  what,
  oneMore,
  main,
  more: [more(main, by)],
});

/** The ways to widen this kitchen that a cook can think of. */
export function wideningsOf(program: DayProgram, labels: Labels): Widening[] {
  const { minutes } = labels;
  const bounded = new Set(program.bounds.map(({ name }) => name));
  return [
    {
      what: 'hours of work',
      oneMore: 'one hour more',
      main: HANDS,
      more: [...anHour(labels), ...inTime(program, () => 60 * labels.hands)],
    },
    {
      what: 'hands',
      oneMore: 'one more pair of hands',
      main: HANDS,
      more: [more(HANDS, minutes), ...inTime(program, (available) => available / labels.hands)],
    },
    ...labels.canners.map((label, canner) => aLoad(program, labels, label, canner)),
    ...jarSizes(program).map(
      (jar): Widening => ({
        what: `${jar} jars`,
        oneMore: '6 more',
        main: stockOf(jarsOf(jar)),
        more: [more(stockOf(jarsOf(jar)), 6), more(stockOf(LIDS), 6)],
      }),
    ),
    only('lids', '12 more', stockOf(LIDS), 12),
    only('bags', '12 more', stockOf(BAGS), 12),
    only('dryer trays', 'one more tray', { of: 'dryer trays' }, 1),
    only('freeze-dryer trays', 'one more tray', { of: 'freeze-dryer trays' }, 1),
    only('freeze-dryer ice', 'room for 1 kg more ice', { of: 'freeze-dryer ice' }, 1),
    only('freezer room', '5 L more', stockOf(FREEZER_ROOM), 5),
    only('freezer load of a day', '1 kg more', stockOf(FREEZER_LOAD), 1),
    only('burners', 'one more burner', BURNERS, minutes),
    ...labels.lots.map((label, lot) => only(label, '1 kg more', { of: 'lot', lot }, 1)),
  ].filter(({ main }) => bounded.has(keyOf(main)));
}

/** So much more of the hands that are there in time. */
const inTime = ({ bounds }: DayProgram, by: (available: number) => number): More[] =>
  bounds.flatMap(({ of, max = 0 }) => (of.of === 'hands in time' ? [more(of, by(max))] : []));

/** An hour more of all that works by the minute. */
function anHour({ hands, burners, pots, canners }: Labels): More[] {
  return [
    more(HANDS, 60 * hands),
    more(BURNERS, 60 * burners),
    ...Array.from({ length: pots }, (_, pot) => [more({ of: 'pot', pot }, 60), more({ of: 'vessel', pot }, 60)]).flat(),
    ...canners.map((_, canner) => more({ of: 'canner', canner }, 60)),
  ];
}

/** The minutes of one more load, the longest of a canner. */
function aLoad(program: DayProgram, { vessels }: Labels, label: string, canner: number): Widening {
  const longest = (resource: Resource): number => {
    const key = keyOf(resource);
    const terms = program.bounds.find(({ name }) => name === key)?.terms ?? [];
    return Math.max(0, ...terms.map(([, minutes]) => minutes));
  };
  const main: Resource = { of: 'canner', canner };
  const pot = vessels?.[canner];
  return {
    what: label,
    oneMore: 'one more load',
    main,
    more: [
      more(main, longest(main)),
      more(BURNERS, longest(main)),
      ...(pot === undefined ? [] : [more({ of: 'vessel', pot }, longest({ of: 'vessel', pot }))]),
    ],
  };
}

/** The sizes of jars that are bounded. */
const jarSizes = ({ bounds }: DayProgram): string[] =>
  bounds.flatMap(({ of }) => (of.of === 'stock' && of.stock.of === 'jars' ? [of.stock.jar] : []));
