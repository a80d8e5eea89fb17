/** The answer that a printed line gives: its figures with their basis, acid and cautions. */
import { toDecimalIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { boilingTemperature } from '../steam/boilingTemperature';
import type { CanningMethod } from '../words/method';
import type { AnyPack } from '../words/pack';
import { acidCaution, acidOf, acidRowOf, type ProcessAcid } from './acid';
import { bandsOf, bandText } from './bands';
import { ruleBasis, ruleFigures } from './canningRules';
import { processCaution, usualCautions } from './cautions';
import { lineOf, needsSterileJars, type ProcessLine, psiQuantity } from './cells';
import { isLowAcid, packOf, type Question, type Served } from './decide';
import { foodsOf, scopeOf } from './scope';
import { type ProcessRow, rowsOf } from './tables';

/** A published process at an elevation. */
export interface TestedProcess {
  readonly tested: true;
  readonly food: string;
  /** The foods that the printed page names; `food` is one of them. */
  readonly scope: readonly string[];
  readonly form: string;
  readonly pack: AnyPack;
  readonly jar: string;
  readonly method: CanningMethod;
  /** Process time: from the full boil, or from the moment the pressure is reached. */
  readonly minutes: number;
  /** Gauge pressure to hold, of the pressure methods. */
  readonly pressure?: Quantity<'pressure'>;
  /** Steam temperature to hold, of an atmospheric steam canner. */
  readonly steamTemperature?: Quantity<'temperature'>;
  readonly headspace: Quantity<'length'>;
  /** The acid that belongs to the process. */
  readonly acid?: ProcessAcid;
  /** Which printed line this is, where there are several, and all that hold here. */
  readonly alternative?: string;
  readonly alternatives?: readonly ProcessLine[];
  /** Whether the empty jars must be sterilized. */
  readonly sterilizeJars: boolean;
  /** What the recipe allows instead of boiling: a lower temperature for longer. */
  readonly pasteurize?: { readonly temperature: Range<Quantity<'temperature'>>; readonly minutes: number };
  /** What the caller left open and the tables leave only one answer to. */
  readonly assumed?: readonly string[];
  /** What each copy prints for this place, where copies disagree. */
  readonly printed?: readonly {
    readonly minutes?: number;
    readonly pressure?: number;
    readonly source?: string;
    /** Why a longer time or higher pressure is not the one served. */
    readonly notServed?: 'older edition' | 'copying fault';
  }[];
  /** Least minutes on high heat with the vent open, before the venting, where the page asks for them. */
  readonly leastHeatUp?: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Feet: where the published elevation charts stop; the printed bands stay open. */
const HIGHEST_CHARTED = 10_000;

/** The steam of a steam canner at a place, rounded up to a tenth of a degree. */
function steamTemperatureFor(elevation: Quantity<'length'>): Quantity<'temperature'> {
  const { temperature } = boilingTemperature({ elevation });
  const degrees = toDecimalIn(temperature, 'degF').times(10).ceil().div(10).toNumber();
  return { value: degrees, unit: 'degF' };
}

/** What each copy prints for the place, where they do not all print the same. */
function copiesOf(row: ProcessRow, band: number): TestedProcess['printed'] {
  const perBand = (figures: number | readonly number[]): number | undefined =>
    typeof figures === 'number' ? figures : figures[band];
  const printed = (row.printed ?? []).map((copy) => ({
    ...(copy.minutes === undefined ? {} : { minutes: perBand(copy.minutes) as number }),
    ...(copy.psi === undefined ? {} : { pressure: copy.psi[band] as number }),
    ...(copy.source === null ? {} : { source: copy.source }),
    ...(copy.notServed === undefined ? {} : { notServed: copy.notServed }),
  }));
  const differ = new Set(printed.map(({ minutes, pressure }) => `${minutes}/${pressure}`)).size > 1;
  return differ ? printed : undefined;
}

/** The answer before its basis and cautions. */
type Figures = Omit<TestedProcess, 'basis' | 'cautions'>;

function basisFor({ cell, size }: Served, asked: Question, figures: Figures): Basis[] {
  const { row, band, psi } = cell;
  const bands = bandsOf(row);
  const where = bandText(bands.upToFt, band);
  const scope = scopeOf(row);
  const acidRow = row.acid === undefined ? undefined : acidRowOf(row.acid, size);
  return joinBasis(
    [
      basisOf(row, `minutes (${psi === undefined ? where : 'every elevation'})`),
      ...(psi === undefined ? [] : [basisOf(row, `gauge pressure (${where})`)]),
      basisOf(row, 'headspace'),
      basisOf(bands, 'elevation bands'),
      ...(scope === undefined ? [] : [basisOf(scope, 'foods of the page')]),
    ],
    acidRow === undefined ? [] : [basisOf(acidRow, 'acid')],
    size === asked.jar.name ? [] : [ruleBasis('next-larger', `a ${asked.jar.name} jar takes the process of a ${size}`)],
    figures.sterilizeJars ? [ruleBasis('sterilize', 'sterilized jars')] : [],
    figures.steamTemperature === undefined
      ? []
      : [
          ruleBasis('steam-time', 'steam canner: the boiling-water time'),
          ...boilingTemperature({ elevation: asked.elevation }).basis,
        ],
    row.pasteurize === true ? [ruleBasis('low-temperature-pasteurization', 'pasteurize')] : [],
  );
}

function cautionsFor({ cell, size }: Served, asked: Question, figures: Figures): Caution[] {
  const { row, psi } = cell;
  const steam = figures.steamTemperature !== undefined;
  const ids = [
    ...(toDecimalIn(asked.elevation, 'ft').gt(HIGHEST_CHARTED) ? ['very-high-kitchen'] : []),
    ...(psi === undefined
      ? [steam ? 'steam-canner' : 'restart-if-boil-stops']
      : ['vent-ten-minutes', 'restart-if-pressure-drops', 'wait-before-opening']),
    ...(steam ? ['barometer-moves-boiling'] : []),
    ...(isLowAcid(rowsOf(row.food, row.form)) ? ['low-acid-botulism'] : []),
    ...(psi !== undefined || row.acid === 'tomato' ? ['boil-before-tasting'] : []),
    ...((figures.alternatives?.length ?? 0) > 1 ? ['one-printed-line'] : []),
    ...(figures.sterilizeJars ? ['sterilize-jars'] : []),
    ...(figures.printed === undefined ? [] : ['copies-disagree']),
    ...(row.cautions ?? []).filter((id) => id !== 'half-gallon-juice' || size === 'half-gallon'),
    ...(scopeOf(row)?.cautions ?? []),
  ];
  const acid = figures.acid === undefined ? [] : [acidCaution(figures.acid)];
  return joinCautions(acid, ids.map(processCaution), usualCautions(), [caution('hot-liquids-burn')]);
}

function pasteurizing(): NonNullable<TestedProcess['pasteurize']> {
  const { low, high, minutes } = ruleFigures('low-temperature-pasteurization');
  return {
    temperature: {
      low: { value: low, unit: 'degF' },
      likely: { value: low, unit: 'degF' },
      high: { value: high, unit: 'degF' },
    },
    minutes,
  };
}

/** The answer of a printed line, for a food by its trade name; `assumed` is what the caller left open. */
export function servedAnswer(served: Served, asked: Question, food: string, assumed: readonly string[]): TestedProcess {
  const { cell, cells, size } = served;
  const { row, band, minutes, psi } = cell;
  const steam = asked.method === 'atmospheric-steam';
  const lines = cells.filter((other) => other.refused === undefined);
  const acidRow = row.acid === undefined ? undefined : acidRowOf(row.acid, size);
  const printed = copiesOf(row, band);
  const figures: Figures = {
    tested: true,
    food,
    scope: foodsOf(row),
    form: row.form,
    pack: packOf(row),
    jar: asked.jar.name,
    method: asked.method,
    minutes,
    ...(psi === undefined ? {} : { pressure: psiQuantity(psi) }),
    ...(steam ? { steamTemperature: steamTemperatureFor(asked.elevation) } : {}),
    headspace: { value: row.headspace, unit: 'in' },
    ...(acidRow === undefined ? {} : { acid: acidOf(acidRow) }),
    ...(row.alternative === undefined ? {} : { alternative: row.alternative, alternatives: lines.map(lineOf) }),
    sterilizeJars: needsSterileJars(row),
    ...(row.pasteurize === true && !steam ? { pasteurize: pasteurizing() } : {}),
    ...(assumed.length === 0 ? {} : { assumed }),
    ...(printed === undefined ? {} : { printed }),
    ...(row.leastHeatUp === undefined ? {} : { leastHeatUp: row.leastHeatUp }),
  };
  return { ...figures, basis: basisFor(served, asked, figures), cautions: cautionsFor(served, asked, figures) };
}
