/** The limits of growth as published: every organism once, with the most generous figure read for each limit. Internal. */
import limitsJson from '../../data/water-activity/growth-limits.json';
import groupsJson from '../../data/water-activity/growth-limits-groups.json';
import olderJson from '../../data/water-activity/growth-limits-older.json';
import othersJson from '../../data/water-activity/growth-limits-others.json';
import linesJson from '../../data/water-activity/regulatory-lines.json';
import { type Basis, joinBasis } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';

interface LimitRow extends Sourced {
  readonly organism: string;
  readonly aw_min: number | null;
  readonly pH_min: number | null;
  readonly pH_max: number | null;
  readonly t_min_degC: number | null;
  readonly t_max_degC: number | null;
}
export type OrganismKind = 'pathogen' | 'bacterium' | 'yeast' | 'mold';
interface GroupRow extends Sourced {
  readonly organism: string;
  readonly kind: OrganismKind;
  readonly aw_min_low: number;
  readonly aw_min_high: number;
}
export interface LineRow extends Sourced {
  readonly rule: string;
  readonly pH: number;
  readonly aw: number | null;
}

const pathogenRows = [limitsJson, olderJson, othersJson].flatMap((json) => asTable<LimitRow>(json).rows);
const groupRows = asTable<GroupRow>(groupsJson).rows;
export const regulatoryLines = asTable<LineRow>(linesJson).rows;

/** The rule of 21 CFR 114.3 for low-acid food: above this pH and above this water activity. */
export const lowAcidLine = regulatoryLines.find(({ rule }) => rule.startsWith('low-acid')) as LineRow & { aw: number };

/** An organism and where it can grow, everything else being favourable. */
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
  readonly basis: readonly Basis[];
}

const known = (values: readonly (number | null | undefined)[]): number[] =>
  values.filter((value): value is number => typeof value === 'number');

/**
 * C. perfringens: one page prints the least and the highest activity the wrong way round (0.97 and 0.93), so its
 * 0.97 is no limit; the lower figures of the other tables are.
 */
function activityLimits(name: string): number[] {
  const printed = pathogenRows.filter((row) => row.organism === name).map((row) => row.aw_min);
  const grouped = groupRows.filter((row) => row.organism === name).map((row) => row.aw_min_low);
  return known([...printed, ...grouped]);
}

const ends = (low: readonly number[], high: readonly number[]): readonly [number, number] | undefined =>
  low.length === 0 || high.length === 0 ? undefined : [Math.min(...low), Math.max(...high)];

function pathogen(name: string): Organism {
  const rows = pathogenRows.filter((row) => row.organism === name);
  const groups = groupRows.filter((row) => row.organism === name);
  const activities = activityLimits(name);
  const botulinum = name.startsWith('Clostridium botulinum');
  // the law counts on botulism above pH 4.6, under the 4.7 of the tables
  const pH = ends(
    botulinum ? [lowAcidLine.pH] : known(rows.map((row) => row.pH_min)),
    known(rows.map((row) => row.pH_max)),
  );
  const temperature = ends(known(rows.map((row) => row.t_min_degC)), known(rows.map((row) => row.t_max_degC)));
  const lines = botulinum || activities.length === 0 ? [basisOf(lowAcidLine, `line for ${name}`)] : [];
  return {
    name,
    kind: 'pathogen',
    // no limit was read for a few: those count down to the line of the law
    waterActivity: activities.length === 0 ? lowAcidLine.aw : Math.min(...activities),
    ...(pH === undefined ? {} : { pH }),
    ...(botulinum ? { abovePH: true as const } : {}),
    ...(temperature === undefined ? {} : { temperature }),
    basis: joinBasis(
      [...rows, ...groups].map((row) => basisOf(row, `growth limits of ${name}`)),
      lines,
    ),
  };
}

const spoiler = (row: GroupRow): Organism => ({
  name: row.organism,
  kind: row.kind,
  waterActivity: row.aw_min_low,
  basis: [basisOf(row, `growth limit of ${row.organism}`)],
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
