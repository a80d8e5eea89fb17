/** The answer that a printed line gives: its figures with their basis, acid and cautions. */
import { formName, nameOf } from '../foods/tables';
import { compareIn, exactIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { ProcessRecipe } from '../sources/processRecipe';
import { basisOf } from '../sources/table';
import { boilingTemperature } from '../steam/boilingTemperature';
import type { CanningMethod } from '../words/method';
import type { AnyPack } from '../words/pack';
import { acidCaution, acidOf, acidRowOf, type ProcessAcid } from './acid';
import { bandsOf, bandText } from './bands';
import { ruleBasis, ruleFigures } from './canningRules';
import { isForElevation, processCaution, usualCautions } from './cautions';
import { lineOf, needsSterileJars, type ProcessLine, psiQuantity } from './cells';
import { isLowAcid, packOf, type Question, type Served } from './decide';
import { processRecipeOf, recipesEndingIn } from './recipesOf';
import { foodsOf } from './scope';
import { type Alternative, type ProcessRow, rowsOf } from './tables';

/** A published process at an elevation. */
export interface TestedProcess {
  /** These tables hold a process that was read in a copy. */
  readonly tested: true;
  /** Trade name of the food. */
  readonly food: string;
  /** Trade names of the foods that the printed page names; `food` is one of them. */
  readonly scope: readonly string[];
  /** The form that the page is for: `halves or slices`. */
  readonly form: string;
  /** Fixed name of the printed recipe that the time belongs to: `apple-sauce`. */
  readonly recipe: string;
  /** The printed recipes that end in it, each with its acid, its batch and what must not be changed. */
  readonly recipes: readonly ProcessRecipe[];
  /** Fixed name of the printed line, a row of the process tables. */
  readonly row: string;
  /** `hot`, `raw`, or `not stated` where the page names none. */
  readonly pack: AnyPack;
  /** The jar, as it was asked for. */
  readonly jar: string;
  /** The canner. */
  readonly method: CanningMethod;
  /** Process time, minutes: from the full boil, or from the moment the pressure is reached. */
  readonly minutes: number;
  /** Gauge pressure to hold, of the pressure methods. */
  readonly pressure?: Quantity<'pressure'>;
  /** Steam temperature to hold, of an atmospheric steam canner. */
  readonly steamTemperature?: Quantity<'temperature'>;
  /** Empty space to leave below the lid. */
  readonly headspace: Quantity<'length'>;
  /** The acid that belongs to the process. */
  readonly acid?: ProcessAcid;
  /** Which printed line this is, where there are several. */
  readonly alternative?: Alternative;
  /** All printed lines that hold here, where there are several. */
  readonly alternatives?: readonly ProcessLine[];
  /** Whether the empty jars must be sterilized. */
  readonly sterilizeJars: boolean;
  /** What the recipe allows instead of boiling: a lower temperature for longer. */
  readonly pasteurize?: {
    /** Of the water around the jars. */
    readonly temperature: Range<Quantity<'temperature'>>;
    /** How long, minutes. */
    readonly minutes: number;
  };
  /** What you left out that has only one tested value. */
  readonly assumed?: readonly string[];
  /** What each copy prints for this place, where copies disagree. */
  readonly copies?: readonly {
    /** Minutes of this copy. */
    readonly minutes?: number;
    /** Gauge pressure of this copy, psi. */
    readonly psi?: number;
    /** Id of the copy in the register of sources, where it has one. */
    readonly source?: string;
    /** Why a longer time or higher pressure is not the one served. */
    readonly notServed?: 'older edition' | 'copying fault';
  }[];
  /** Least minutes on high heat with the vent open, before the venting, where the page asks for them. */
  readonly leastHeatUp?: number;
  /** Where each figure comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** Feet: where the published elevation charts stop; the printed bands stay open. */
const HIGHEST_CHARTED = 10_000;

/** The steam of a steam canner at a place, rounded up to a tenth of a degree. */
function steamTemperatureFor(elevation: Quantity<'length'>): Quantity<'temperature'> {
  const { temperature } = boilingTemperature({ elevation });
  const degrees = exactIn(temperature, 'degF').times(10).toPlaces(0, 'up').div(10).toNumber();
  return { value: degrees, unit: 'degF' };
}

/** What each copy prints for the place, where they do not all print the same. */
function copiesOf(row: ProcessRow, band: number): TestedProcess['copies'] {
  const perBand = (figures: number | readonly number[]): number | undefined =>
    typeof figures === 'number' ? figures : figures[band];
  const copies = (row.copies ?? []).map((copy) => ({
    ...(copy.minutes === undefined ? {} : { minutes: perBand(copy.minutes) as number }),
    ...(copy.psi === undefined ? {} : { psi: copy.psi[band] as number }),
    ...(copy.source === null ? {} : { source: copy.source }),
    ...(copy.notServed === undefined ? {} : { notServed: copy.notServed }),
  }));
  const differ = new Set(copies.map(({ minutes, psi }) => `${minutes}/${psi}`)).size > 1;
  return differ ? copies : undefined;
}

/** The answer before its basis and cautions. */
type Figures = Omit<TestedProcess, 'basis' | 'cautions'>;

function basisFor({ cell, size }: Served, asked: Question, figures: Figures): Basis[] {
  const { row, band, psi } = cell;
  const bands = bandsOf(row);
  const where = bandText(bands.upToFt, band);
  const acidRow = row.acid === undefined ? undefined : acidRowOf(row.acid, size);
  const byElevation = psi === undefined ? 'minutes' : 'pressure';
  return [
    basisOf(row, 'minutes', psi === undefined ? where : 'at every elevation'),
    ...(psi === undefined ? [] : [basisOf(row, 'pressure', where)]),
    basisOf(row, 'headspace'),
    basisOf(bands, byElevation, 'elevation bands'),
    ...(acidRow === undefined ? [] : [basisOf(acidRow, 'acid')]),
    ...(size === asked.jar.name
      ? []
      : [ruleBasis('next-larger', 'jar', `a ${asked.jar.name} jar takes the process of a ${size}`)]),
    ...(figures.sterilizeJars ? [ruleBasis('sterilize', 'sterilizeJars')] : []),
    ...(figures.steamTemperature === undefined
      ? []
      : [
          ruleBasis('steam-time', 'minutes', 'steam canner: the boiling-water time'),
          ...boilingTemperature({ elevation: asked.elevation }).basis.map((line) => ({
            ...line,
            of: 'steamTemperature',
          })),
        ]),
    ...(figures.pasteurize === undefined ? [] : [ruleBasis('low-temperature-pasteurization', 'pasteurize')]),
  ];
}

function cautionsFor({ cell, size }: Served, asked: Question, figures: Figures): Caution[] {
  const { row, psi } = cell;
  const steam = figures.steamTemperature !== undefined;
  const ids = [
    ...(compareIn(asked.elevation, 'ft', HIGHEST_CHARTED) > 0 ? ['very-high-kitchen'] : []),
    ...(psi === undefined
      ? [steam ? 'steam-canner' : 'restart-if-boil-stops']
      : ['vent-ten-minutes', 'restart-if-pressure-drops', 'wait-before-opening']),
    ...(steam ? ['barometer-moves-boiling'] : []),
    ...(isLowAcid(rowsOf(row.recipe)) ? ['low-acid-botulism'] : []),
    ...(psi !== undefined || row.acid === 'tomato' ? ['boil-before-tasting'] : []),
    ...((figures.alternatives?.length ?? 0) > 1 ? ['one-printed-line'] : []),
    ...(figures.sterilizeJars ? ['sterilize-jars'] : []),
    ...(figures.copies === undefined ? [] : ['copies-disagree']),
    ...(row.cautions ?? []).filter(
      (id) => isForElevation(id, asked.elevation) && (id !== 'half-gallon-juice' || size === 'half-gallon'),
    ),
  ];
  const acid = figures.acid === undefined ? [] : [acidCaution(figures.acid)];
  return [...acid, ...ids.map(processCaution), ...usualCautions(), caution('hot-liquids-burn')];
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

/** The answer of a printed line, for a food by its trade name; `assumed` names what was left out. */
export function servedAnswer(
  served: Served,
  asked: Question,
  { name: food, id }: { readonly name: string; readonly id: string },
  assumed: readonly string[],
  wanted?: string,
): TestedProcess {
  const { cell, cells, size } = served;
  const { row, band, minutes, psi } = cell;
  const steam = asked.method === 'atmospheric-steam';
  const lines = cells.filter((other) => other.refused === undefined);
  const acidRow = row.acid === undefined ? undefined : acidRowOf(row.acid, size);
  const copies = copiesOf(row, band);
  const ending = recipesEndingIn(row.recipe, id);
  const recipes = wanted === undefined ? ending : ending.filter((each) => each.id === wanted);
  const figures: Figures = {
    tested: true,
    food,
    scope: (wanted === undefined ? foodsOf(row) : recipes.flatMap(({ foods }) => foods)).map(nameOf),
    form: formName(row.form),
    recipe: wanted ?? row.recipe,
    recipes: recipes.map(processRecipeOf),
    row: row.id,
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
    ...(copies === undefined ? {} : { copies }),
    ...(row.leastHeatUp === undefined ? {} : { leastHeatUp: row.leastHeatUp }),
  };
  const pages = recipes.flatMap((each) => [
    basisOf(each, 'scope', 'foods of the page'),
    basisOf(each, 'recipes', each.name),
  ]);
  return {
    ...figures,
    basis: [...basisFor(served, asked, figures), ...pages],
    cautions: cautionsFor(served, asked, figures),
  };
}
