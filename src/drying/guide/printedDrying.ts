/** The rows of the guide and of the yields as the answers print them. */
import { formName } from '../../foods/tables';
import type { Quantity, Range } from '../../quantity/types';
import type { Obtained } from '../../sources/table';
import { figure } from '../rows';
import type { GuideRow, YieldRow } from './tables';

type Ends = readonly [number, number];

/** How thick pieces are cut; both ends the same where one figure is printed. */
export interface Thickness {
  /** The thinnest. */
  readonly low: Quantity<'length'>;
  /** The thickest. */
  readonly high: Quantity<'length'>;
}

/** The steps before drying that a publication prints. */
export interface DryingSteps {
  /** Minutes in steam. */
  readonly steamBlanch?: Range<Quantity<'time'>>;
  /** Minutes in boiling water. */
  readonly waterBlanch?: Range<Quantity<'time'>>;
  /** Minutes in simmering syrup. */
  readonly syrupBlanch?: Quantity<'time'>;
}

/** The cut that hours are printed for. */
export interface DryingCut {
  /** Names of the cuts; none where the hours are general. */
  readonly forms?: readonly string[];
  /** How thick the pieces are, where it is printed. */
  readonly thickness?: Thickness;
}

/** What one publication prints. */
export interface PrintedDrying extends DryingSteps, DryingCut {
  /** How the food is readied. */
  readonly preparation?: string;
  /** Minutes of sulfuring. */
  readonly sulfur?: Quantity<'time'>;
  /** Hours in a dryer. */
  readonly hours?: Range<Quantity<'time'>>;
  /** How it feels when dry. */
  readonly drynessTest?: string;
  /** What else is to be known of the line. */
  readonly note?: string;
  /** How the line came into the table: `read`, `memory` ... */
  readonly obtained: Obtained;
  /** Id in the register of sources. */
  readonly source: string;
}

/** What fresh food gives dried, as printed. */
export interface PrintedYield {
  /** Dried mass for each part of fresh mass, below 1. */
  readonly driedShare: {
    /** The low end. */
    readonly low: number;
    /** The high end. */
    readonly high: number;
  };
  /** The fresh mass of the line. */
  readonly fresh?: Quantity<'mass'>;
  /** The dried mass that it gives. */
  readonly dried?: {
    /** The least. */
    readonly low: Quantity<'mass'>;
    /** The most. */
    readonly high: Quantity<'mass'>;
  };
  /** The dried volume that it gives. */
  readonly driedVolume?: {
    /** The least. */
    readonly low: Quantity<'volume'>;
    /** The most. */
    readonly high: Quantity<'volume'>;
  };
  /** How the line came into the table: `read`, `memory` ... */
  readonly obtained: Obtained;
  /** Id in the register of sources. */
  readonly source: string;
}

const time = (value: number, unit: 'min' | 'h'): Quantity<'time'> => ({ value, unit });
/** Halfway between two ends. */
export const middle = ([low, high]: Ends): number => (low + high) / 2;
/** Times from the least to the most; the likely one is in the middle if not given. */
export const timeRange = (ends: Ends, unit: 'min' | 'h', likely = middle(ends)): Range<Quantity<'time'>> => ({
  low: time(ends[0], unit),
  likely: time(likely, unit),
  high: time(ends[1], unit),
});

/** The steps of a row, without those it has none of. */
export const stepsOf = (row: GuideRow): DryingSteps => ({
  ...(row.steamBlanch_minutes === null ? {} : { steamBlanch: timeRange(row.steamBlanch_minutes, 'min') }),
  ...(row.waterBlanch_minutes === null ? {} : { waterBlanch: timeRange(row.waterBlanch_minutes, 'min') }),
  ...(row.syrupBlanch_minutes === null ? {} : { syrupBlanch: time(row.syrupBlanch_minutes, 'min') }),
});

/** The cut that a row's hours are for. */
export const cutOf = ({ forms, thickness_in: inches }: GuideRow): DryingCut => ({
  ...(forms === undefined ? {} : { forms: forms.map(formName) }),
  ...(inches === undefined
    ? {}
    : { thickness: { low: { value: inches[0], unit: 'in' }, high: { value: inches[1], unit: 'in' } } }),
});

/** A publication's line. */
export const printedLine = (row: GuideRow): PrintedDrying => ({
  ...(row.preparation === null ? {} : { preparation: row.preparation }),
  ...cutOf(row),
  ...stepsOf(row),
  ...(row.sulfur_minutes === undefined ? {} : { sulfur: time(row.sulfur_minutes, 'min') }),
  ...(row.hours === null ? {} : { hours: timeRange(row.hours, 'h') }),
  ...(row.drynessTest === null ? {} : { drynessTest: row.drynessTest }),
  ...(row.notes === undefined ? {} : { note: row.notes }),
  obtained: row.obtained,
  source: row.source,
});

function driedShareOf({ fresh_lb, dried_lb, freshPerDried }: YieldRow): PrintedYield['driedShare'] {
  if (freshPerDried !== undefined) return { low: 1 / freshPerDried[1], high: 1 / freshPerDried[0] };
  const [least, most] = figure(dried_lb);
  return { low: least / figure(fresh_lb), high: most / figure(fresh_lb) };
}

/** A publication's yield. */
export const printedYield = (row: YieldRow): PrintedYield => ({
  driedShare: driedShareOf(row),
  ...(row.fresh_lb === undefined ? {} : { fresh: { value: row.fresh_lb, unit: 'lb' } }),
  ...(row.dried_lb === undefined
    ? {}
    : { dried: { low: { value: row.dried_lb[0], unit: 'lb' }, high: { value: row.dried_lb[1], unit: 'lb' } } }),
  ...(row.dried_pints === undefined
    ? {}
    : {
        driedVolume: {
          low: { value: row.dried_pints[0], unit: 'pint' },
          high: { value: row.dried_pints[1], unit: 'pint' },
        },
      }),
  obtained: row.obtained,
  source: row.source,
});
