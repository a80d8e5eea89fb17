import { customary } from '../figures/customary';
import type { Block, Loose, Part, Row } from './board';
import { type CannerChoice, type CanStep, heatOf, type Means, type Portion, type QuietStep } from './job';

/** The rows of the board, by where they stand: hands, burners, dryer trays, freeze-dryer, freezer, a look, pots, canners. */
const HANDS = 0;
const BURNERS = 1;
const QUIET = { dry: 2, 'freeze-dry': 3, freeze: 4 } as const;
/** Somebody who looks after a pressure canner: any number of them, but only in the hours. */
export const LOOK = 5;
const POTS = 6;

const LEAST_STRETCH = customary('least-stretch');

/** The resources of a kitchen by the names that tasks use. */
export function rowsOf({ hands, burners, pots, canners, vessels, trays, freezerKg, busy }: Means): Row[] {
  const row = (name: string, capacity: number, open: Row['open'], busyUntil = 0): Row => ({
    name,
    capacity,
    open,
    ...(busyUntil > 0 ? { busyUntil } : {}),
  });
  const busyPot = (pot: number) =>
    Math.max(0, ...canners.map((_, each) => (vessels?.[each] === pot ? busyCanner(each) : 0)));
  const busyCanner = (canner: number) => busy?.canners?.[canner] ?? 0;
  return [
    row('hands', hands, 'in hours'),
    row('burners', burners, 'all day'),
    row('dryer trays', trays, 'always', busy?.dryer),
    row('freeze-dryer', 1, 'always', busy?.freezeDryer),
    row('freezer', freezerKg ?? Number.POSITIVE_INFINITY, 'always'),
    row('a look', Number.POSITIVE_INFINITY, 'in hours'),
    ...pots.map(({ label }, pot) => row(label, 1, 'all day', busyPot(pot))),
    // a canner that is one of the pots has that pot's row
    ...canners.flatMap((label, canner) =>
      vessels?.[canner] === undefined ? [row(label, 1, 'all day', busyCanner(canner))] : [],
    ),
  ];
}

/** What tasks use, as the answer names it: all rows but the look. */
export const resourcesOf = (means: Means): Row[] => rowsOf(means).filter((_, row) => row !== LOOK);

/** The row of each canner. */
function cannerRows({ pots, canners, vessels }: Means): number[] {
  let next = POTS + pots.length;
  return canners.map((_, canner) => {
    const pot = vessels?.[canner];
    return pot === undefined ? next++ : POTS + pot;
  });
}

/** Minutes by the clock of work that several pairs of hands share. */
export const shared = (work: number, hands: number): number => Math.ceil(work / hands - 1e-9);

/** Minutes of one pair of hands to put the jars of a load in, or to lift them out. */
export const lifting = ({ lift }: CanStep, minutes: number): number =>
  Math.min(Math.ceil(lift), Math.floor(minutes / 2));

/** What each piece of work keeps busy in one kitchen; where hands or pots can be chosen, every way to do it. */
export interface Blocks {
  /** Preparing a portion, by one or more pairs of hands; none where there is nothing to prepare. */
  readonly cuts: (portion: Portion) => Block[];
  /** The same, put down where something else calls for the hands, and taken up again. */
  readonly cutting: (portion: Portion) => Loose;
  /** Cooking and filling in one piece: the pot stays on its burner until the last jar is filled, or the last batch is blanched. */
  readonly stoves: (portion: Portion) => Block[];
  /** Filling from a pot that is kept hot, by one or more pairs of hands. */
  readonly fills: (work: number) => Block[];
  /** The pot and burner of a portion for some minutes more. */
  readonly hot: (stove: Block, minutes: number) => Block;
  /** One load, from the first jar in to the last jar out; with the minutes just before it that its water is heated. */
  readonly load: (step: CanStep, choice: CannerChoice, heated: number) => Block;
  /** The water of a canner that stood cold. */
  readonly heat: (choice: CannerChoice) => Block;
  readonly quiet: (step: QuietStep) => Block;
  /** Minutes of some pairs of hands, one unless named. */
  readonly handwork: (minutes: number, pairs?: number) => Block;
  /** A pot that is hot already, on its burner: each that holds these liters. */
  readonly pots: (litres: number, minutes: number) => Block[];
  /** A canner and its burner for the rest of a load. */
  readonly running: (canner: number, minutes: number) => Block;
}

const part = (row: number, amount: number, at: number, minutes: number): Part => ({ row, amount, at, minutes });

/** The same blocks for the same portion, made once: many orders of the same jobs are tried. */
function once(make: (portion: Portion) => Block[]): (portion: Portion) => Block[] {
  const known = new Map<Portion, Block[]>();
  return (portion) => {
    const blocks = known.get(portion) ?? make(portion);
    known.set(portion, blocks);
    return blocks;
  };
}

/** Cooking and filling in one piece. */
function stove({ cook, fill }: Portion, fillers: number, pot: number | undefined): Block {
  const boils = cook?.minutes ?? 0;
  const heat = heatOf(cook);
  const fills = shared(fill, fillers);
  const minutes = heat + boils + fills;
  // what is blanched is cooled and drained before it is packed: its pot is free
  const inPot = cook?.blanch === undefined ? minutes : heat + boils;
  return {
    minutes,
    parts: [
      ...(pot === undefined ? [] : [part(pot, 1, 0, inPot), part(BURNERS, 1, 0, inPot)]),
      ...(cook?.stirred ? [part(HANDS, 1, heat, boils)] : []),
      ...(fills > 0 ? [part(HANDS, fillers, heat + boils, fills)] : []),
    ],
  };
}

export function blocksOf(means: Means): Blocks {
  const { hands, pots } = means;
  const handsTried = Array.from({ length: hands }, (_, index) => hands - index);
  const rows = cannerRows(means);
  const canner = (which: number) => rows[which] as number;
  const potsFor = ({ cook }: Portion): (number | undefined)[] =>
    cook === undefined
      ? [undefined]
      : pots.flatMap(({ litres }, pot) => (litres >= cook.litres - 1e-6 ? [POTS + pot] : []));
  return {
    cuts: once(({ prepare }) =>
      prepare <= 0
        ? []
        : handsTried.map((cutters) => {
            const minutes = shared(prepare, cutters);
            return { minutes, parts: [part(HANDS, cutters, 0, minutes)] };
          }),
    ),
    cutting: ({ prepare }) => ({ row: HANDS, work: prepare, least: LEAST_STRETCH }),
    stoves: once((portion) =>
      potsFor(portion).flatMap((pot) => handsTried.map((fillers) => stove(portion, fillers, pot))),
    ),
    fills: (work) =>
      handsTried.map((fillers) => {
        const minutes = shared(work, fillers);
        return { minutes, parts: minutes > 0 ? [part(HANDS, fillers, 0, minutes)] : [] };
      }),
    hot: ({ parts }, minutes) => ({
      minutes,
      parts: parts.filter(({ row }) => row !== HANDS).map(({ row, amount }) => part(row, amount, 0, minutes)),
    }),
    load: (step, choice, heated) => {
      const lift = lifting(step, choice.minutes);
      const minutes = heated + choice.minutes;
      return {
        minutes,
        parts: [
          part(canner(choice.canner), 1, 0, minutes),
          part(BURNERS, 1, 0, minutes),
          ...(choice.throughBreaks ? [] : [part(LOOK, 1, 0, minutes)]),
          part(HANDS, 1, heated, lift),
          part(HANDS, 1, minutes - lift, lift),
        ],
      };
    },
    heat: ({ canner: which, warmUp }) => ({
      minutes: warmUp,
      parts: [part(canner(which), 1, 0, warmUp), part(BURNERS, 1, 0, warmUp)],
    }),
    // a crock stands where it does not matter how long
    quiet: ({ kind, amount, minutes }) =>
      kind === 'ferment' || kind === 'stand'
        ? { minutes: 0, parts: [] }
        : { minutes, parts: [part(QUIET[kind], amount, 0, minutes)] },
    handwork: (minutes, pairs = 1) => ({ minutes, parts: [part(HANDS, pairs, 0, minutes)] }),
    pots: (litres, minutes) =>
      pots.flatMap((pot, index) =>
        pot.litres >= litres - 1e-6
          ? [{ minutes, parts: [part(POTS + index, 1, 0, minutes), part(BURNERS, 1, 0, minutes)] }]
          : [],
      ),
    running: (which, minutes) => ({
      minutes,
      parts: [part(canner(which), 1, 0, minutes), part(BURNERS, 1, 0, minutes)],
    }),
  };
}
