/** The limits of growth as published: every organism once, with the most generous figure read for each limit. Internal. */
import byLawJson from '../../data/water-activity/growth-by-law.json';
import limitsJson from '../../data/water-activity/growth-limits.json';
import groupsJson from '../../data/water-activity/growth-limits-groups.json';
import olderJson from '../../data/water-activity/growth-limits-older.json';
import othersJson from '../../data/water-activity/growth-limits-others.json';
import { lowAcidByLaw, pHLimit } from '../acid/phLimits';
import type { Basis } from '../sources/basis';
import { asTable, basisOf } from '../sources/table';
import type { TableRow } from './schemas';

/** What every table of single organisms has in common. */
type LimitRow = TableRow<'growth-limits-others'>;
type GroupRow = TableRow<'growth-limits-groups'>;

const pathogenRows: readonly LimitRow[] = [
  ...asTable<TableRow<'growth-limits'>>(limitsJson).rows,
  ...asTable<TableRow<'growth-limits-older'>>(olderJson).rows,
  ...asTable<LimitRow>(othersJson).rows,
];
const groupRows = asTable<GroupRow>(groupsJson).rows;
/** The organisms that the law counts as growing above its own pH line, each with the id of that line. */
const byLaw = new Map(
  asTable<TableRow<'growth-by-law'>>(byLawJson).rows.map(({ organism, limit }) => [organism, limit]),
);

/** What kind of organism it is: `pathogen` makes people ill, the others spoil food. */
export type OrganismKind = GroupRow['kind'];

/** An organism and where it can grow, everything else being favorable. */
export interface Organism {
  readonly name: string;
  readonly kind: OrganismKind;
  /** Least water activity. */
  readonly waterActivity: number;
  /** Least and highest pH, where published. */
  readonly pH?: readonly [number, number];
  /** Whether growth starts only above the least pH. */
  readonly abovePH?: true;
  /** Least and highest temperature in degC, where published. */
  readonly temperature?: readonly [number, number];
  /** The rows it rests on, as lines for an answer's field. */
  readonly basis: (of: string) => readonly Basis[];
}

const known = (values: readonly (number | null | undefined)[]): number[] =>
  values.filter((value): value is number => typeof value === 'number');

const ends = (low: readonly number[], high: readonly number[]): readonly [number, number] | undefined =>
  low.length === 0 || high.length === 0 ? undefined : [Math.min(...low), Math.max(...high)];

function pathogen(name: string): Organism {
  const rows = pathogenRows.filter((row) => row.organism === name);
  const groups = groupRows.filter((row) => row.organism === name);
  // C. perfringens: one page prints the least and the highest activity the wrong way round (0.97 and 0.93); the lower
  // figures of the other tables decide
  const activities = known([...rows.map((row) => row.aw_min), ...groups.map((row) => row.aw_min_low)]);
  const lineId = byLaw.get(name);
  const line = lineId === undefined ? undefined : pHLimit(lineId);
  const law = lowAcidByLaw();
  const pH = ends(
    line === undefined ? known(rows.map((row) => row.pH_min)) : [line.pH],
    known(rows.map((row) => row.pH_max)),
  );
  const temperature = ends(known(rows.map((row) => row.t_min_degC)), known(rows.map((row) => row.t_max_degC)));
  const ruled = line ?? (activities.length === 0 ? law : undefined);
  return {
    name,
    kind: 'pathogen',
    // no limit was read for a few: those count down to the line of the law
    waterActivity: activities.length === 0 ? law.waterActivityAbove : Math.min(...activities),
    ...(pH === undefined ? {} : { pH }),
    ...(line === undefined ? {} : { abovePH: true as const }),
    ...(temperature === undefined ? {} : { temperature }),
    basis: (of) => [
      ...[...rows, ...groups].map((row) => basisOf(row, of, `growth limits of ${name}`)),
      ...(ruled === undefined ? [] : [basisOf(ruled, of, `line of the law for ${name}`)]),
    ],
  };
}

const spoiler = (row: GroupRow): Organism => ({
  name: row.organism,
  kind: row.kind,
  waterActivity: row.aw_min_low,
  basis: (of) => [basisOf(row, of, `growth limit of ${row.organism}`)],
});

/** Every organism, pathogens first, each list from the one that needs the most water to the one that needs the least. */
export const organisms: readonly Organism[] = [
  ...[...new Set(pathogenRows.map((row) => row.organism))].map(pathogen),
  ...groupRows.filter((row) => row.kind !== 'pathogen').map(spoiler),
].sort(
  (one, other) =>
    Number(other.kind === 'pathogen') - Number(one.kind === 'pathogen') || other.waterActivity - one.waterActivity,
);

/** Whether acidity and temperature let it grow; what is not given excludes nothing. */
export function conditionsAllow(organism: Organism, pH: number | undefined, t: number | undefined): boolean {
  const { pH: acid, abovePH, temperature } = organism;
  if (pH !== undefined && acid !== undefined) {
    const [low, high] = acid;
    if (pH < low || pH > high || (abovePH && pH === low)) return false;
  }
  return t === undefined || temperature === undefined || (t >= temperature[0] && t <= temperature[1]);
}
