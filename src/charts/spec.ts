/** What every chart shares: the shape of a spec, colors that color-blind readers tell apart, sizes that can be read. */
import { standsBehind } from '../plan/figures/standsBehind';
import { type Basis, type Caution, joinBasis, joinCautions } from '../sources/basis';
import { source } from '../sources/source';

/**
 * A chart as a Vega-Lite specification: plain JSON that any program of that open standard draws. What the figures rest
 * on, and the cautions that go with them, stand in `usermeta`, which drawing programs leave alone.
 */
export interface ChartSpec<Row extends object = object> {
  /** The version of Vega-Lite that the chart is written in. */
  readonly $schema: string;
  /** What stands over the chart. */
  readonly title: {
    /** The heading. */
    readonly text: string;
    /** The lines under it. */
    readonly subtitle: readonly string[];
  };
  /** The chart in words, for those who cannot see it. */
  readonly description: string;
  /** Width of the drawing area in pixels, without axes and legend. */
  readonly width: number;
  /** Height of the drawing area in pixels. */
  readonly height: number;
  /** The rows that the marks draw. */
  readonly data: {
    /** One row a mark. */
    readonly values: readonly Row[];
  };
  /** The marks, from the back to the front. */
  readonly layer: readonly ChartLayer[];
  /** Fonts, colors and lines. */
  readonly config: Readonly<Record<string, unknown>>;
  /** What drawing programs leave alone. */
  readonly usermeta: {
    /** Where the figures come from; `of` is a path of the chart, such as `data.values`. */
    readonly basis: readonly Basis[];
    /** What to mind, dangers first. */
    readonly cautions: readonly Caution[];
  };
}

/** One layer of marks; those that stand apart from the chart's rows bring their own. */
export interface ChartLayer {
  /** The kind of mark and its look. */
  readonly mark: Readonly<Record<string, unknown>>;
  /** Which column sets the place, the size and the color of a mark. */
  readonly encoding?: Readonly<Record<string, unknown>>;
  /** Rows of its own. */
  readonly data?: {
    /** One row a mark. */
    readonly values: readonly object[];
  };
  /** What is worked out from the rows first. */
  readonly transform?: readonly Readonly<Record<string, unknown>>[];
}

const VEGA_LITE = 'https://vega.github.io/schema/vega-lite/v6.json';

/**
 * Eight colors that people with any of the common kinds of color blindness tell apart, and that differ in lightness
 * enough for a gray print. Okabe and Ito, Color Universal Design (2008); hex values as printed in Wong, Nature Methods
 * 8, 441 (2011), recalled.
 */
export const OKABE_ITO = {
  black: '#000000',
  orange: '#E69F00',
  skyBlue: '#56B4E9',
  bluishGreen: '#009E73',
  yellow: '#F0E442',
  blue: '#0072B2',
  vermillion: '#D55E00',
  reddishPurple: '#CC79A7',
} as const;
/** For what has no figure: behind everything else. */
export const QUIET_GREY = '#BBBBBB';

/** The colors for a number of kinds, the darkest first; after eight they come round again. */
export const coloursFor = (count: number): string[] => {
  const { blue, orange, bluishGreen, reddishPurple, skyBlue, vermillion, yellow, black } = OKABE_ITO;
  const order = [blue, orange, bluishGreen, reddishPurple, skyBlue, vermillion, yellow, black];
  return Array.from({ length: count }, (_, index) => order[index % order.length] as string);
};

/** Sizes in pixels: legible on paper at half the width of a page. */
const CONFIG = {
  background: 'white',
  title: {
    anchor: 'start',
    fontSize: 18,
    subtitleFontSize: 13,
    subtitleColor: '#444444',
    subtitlePadding: 6,
    offset: 16,
  },
  axis: { labelFontSize: 13, titleFontSize: 14, titleFontWeight: 'normal', titlePadding: 10, gridColor: '#E8E8E8' },
  legend: { labelFontSize: 13, titleFontSize: 13, titleFontWeight: 'normal', labelLimit: 320, symbolSize: 160 },
  text: { fontSize: 13 },
  view: { stroke: null },
} as const;
export const WIDTH = 640;
export const HEIGHT = 360;

export interface Parts<Row extends object> {
  readonly title: string;
  /** Sentences under the title; long ones are broken. */
  readonly subtitle: readonly string[];
  readonly description: string;
  readonly values: readonly Row[];
  readonly layer: readonly ChartLayer[];
  readonly height?: number;
  readonly basis: readonly (readonly Basis[])[];
  readonly cautions: readonly (readonly Caution[])[];
}

/** The whole spec from its parts. */
export function chart<Row extends object>(parts: Parts<Row>): ChartSpec<Row> {
  const { title, subtitle, description, values, layer, height = HEIGHT, basis, cautions } = parts;
  return {
    $schema: VEGA_LITE,
    title: { text: title, subtitle: subtitle.flatMap((line) => wrapped(line)) },
    description,
    width: WIDTH,
    height,
    data: { values },
    layer,
    config: CONFIG,
    usermeta: { basis: joinBasis(...basis), cautions: joinCautions(...cautions) },
  };
}

/** Characters that fit the width of a chart. */
const LINE = 105;

/** A text in lines that fit the width of a chart. */
export function wrapped(text: string): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ').filter((each) => each !== '')) {
    const last = lines[lines.length - 1];
    if (last === undefined || last.length + word.length + 1 > LINE) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}

/** The basis of other answers behind the rows of a chart: `of` is the column, `note` what the line said it was for. */
export const behindRows = (column: string | undefined, ...lists: readonly (readonly Basis[])[]): Basis[] =>
  standsBehind(column === undefined ? 'data.values' : `data.values[].${column}`, ...lists);

/** What the register writes where a work has no publisher. */
const NO_PUBLISHER = 'none';

/** The sources of an answer for the line under the title: `Source: title (publisher, year).` */
export function sourceLine(basis: readonly Basis[]): string {
  const ids = [...new Set(basis.flatMap((line) => (line.source === undefined ? [] : [line.source])))];
  const cited = ids.map((id) => {
    const { title, publisher, year } = source(id);
    const said = [...(publisher === NO_PUBLISHER ? [] : [publisher]), ...(year === undefined ? [] : [year])];
    return said.length === 0 ? title : `${title} (${said.join(', ')})`;
  });
  return cited.length === 0 ? '' : `${cited.length === 1 ? 'Source' : 'Sources'}: ${cited.join('; ')}.`;
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
/** A number for a label: to `places` places, without a tail of zeros. */
export const digits = (value: number, places: number): string => String(Number(value.toFixed(places)));
/** A unit as readers write it. */
export const unitText = (unit: string): string => unit.replace('deg', '°');
