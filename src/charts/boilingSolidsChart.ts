import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fields, optional, readInput } from '../quantity/fields';
import { formatQuantity } from '../quantity/formatQuantity';
import { syrupBoilingTemperature } from '../solution/index';
import { gelTemperature } from '../sugar/index';
import { type BrixInput, brix } from '../words/brix';
import { elevation } from '../words/elevation';
import { behindRows, type ChartLayer, type ChartSpec, chart, digits, OKABE_ITO, unitText } from './spec';

const LAST_BRIX = 80;

const schema = /* @__PURE__ */ fields({
  /** Elevation of the kitchen, -500 to 5,000 m. */
  elevation: elevation(),
  /** Soluble solids of your own pot, marked on the chart: 0 to 80 degrees Brix. */
  brix: optional(brix({ max: LAST_BRIX })),
});

export type BoilingSolidsChartInput = Given<z.input<typeof schema>>;

/** Boiling temperature at a Brix: by the source followed, and the lowest and highest of all. */
export interface BoilingSolidsRow {
  /** Soluble solids, degrees Brix. */
  readonly brix: number;
  /** The lowest of all sources, in the unit of the chart. */
  readonly low: number;
  /** By the source followed. */
  readonly likely: number;
  /** The highest of all sources. */
  readonly high: number;
}

/**
 * Boiling temperature of sugar syrup against its soluble solids at the kitchen's elevation, with the spread of the
 * published sources as a band and the gel point as a line.
 *
 * Each row is an answer of `syrupBoilingTemperature`; the line across is `gelTemperature`.
 *
 * @returns a Vega-Lite spec; temperatures in degF for an elevation in feet, otherwise in degC
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { boilingSolidsChart } from 'stillroom/charts';
 *
 * const { data } = boilingSolidsChart({ elevation: '3400 ft' });
 * data.values[65]?.likely; // ≈ 212.5
 * ```
 */
export function boilingSolidsChart(input: BoilingSolidsChartInput): ChartSpec<BoilingSolidsRow> {
  const given = readInput(schema, input);
  const boilingAt = (degrees: number) =>
    syrupBoilingTemperature({ brix: `${degrees.toFixed(6)} Brix` as BrixInput, elevation: input.elevation });
  const rowOf = (solids: number): BoilingSolidsRow => {
    const { low, likely, high } = boilingAt(solids).temperatureRange;
    return { brix: solids, low: low.value, likely: likely.value, high: high.value };
  };
  const values = Array.from({ length: LAST_BRIX + 1 }, (_, solids) => rowOf(solids));
  const gel = gelTemperature({ elevation: input.elevation });
  const water = boilingAt(0);
  const unit = unitText(water.temperature.unit);
  const degrees = (value: number): string => `${digits(value, 1)} ${unit}`;
  const place = formatQuantity(given.elevation);
  return answer(
    chart({
      title: `Soluble solids and boiling temperature at ${place}`,
      subtitle: [
        "Line: sucrose syrup by Starzak and Peacock's equation. Band: all published sources at hand.",
        `Water boils here at ${degrees(water.temperature.value)}; the gel point is ${degrees(gel.temperature.value)}.`,
      ],
      description: `At ${place} water boils at ${degrees(water.temperature.value)}, a syrup of 65 degrees Brix at ${degrees(boilingAt(65).temperature.value)}; the gel point is ${degrees(gel.temperature.value)}.`,
      values,
      layer: layersOf(
        unit,
        gel.temperature.value,
        `gel point, ${degrees(gel.temperature.value)}`,
        given.brix === undefined ? [] : [rowOf(given.brix)],
      ),
      basis: [behindRows('likely', water.basis), behindRows(undefined, gel.basis)],
      cautions: [water.cautions, gel.cautions],
    }),
  );
}

function layersOf(unit: string, gel: number, gelText: string, pot: readonly BoilingSolidsRow[]): ChartLayer[] {
  const x = {
    field: 'brix',
    type: 'quantitative',
    title: 'soluble solids, °Brix (g of sugar in 100 g of syrup)',
    scale: { domain: [0, LAST_BRIX] },
  };
  const y = { field: 'likely', type: 'quantitative', title: `boiling temperature, ${unit}`, scale: { zero: false } };
  return [
    {
      mark: { type: 'area', color: OKABE_ITO.orange, opacity: 0.35 },
      encoding: { x, y: { ...y, field: 'low' }, y2: { field: 'high' } },
    },
    { mark: { type: 'line', color: OKABE_ITO.blue, strokeWidth: 3 }, encoding: { x, y } },
    {
      data: { values: [{ likely: gel, text: gelText }] },
      mark: { type: 'rule', color: OKABE_ITO.vermillion, strokeWidth: 2, strokeDash: [6, 4] },
      encoding: { y },
    },
    {
      data: { values: [{ likely: gel, text: gelText }] },
      mark: { type: 'text', color: OKABE_ITO.vermillion, align: 'left', dy: -8 },
      encoding: { x: { value: 6 }, y, text: { field: 'text' } },
    },
    ...pot.flatMap((row): ChartLayer[] => [
      {
        data: { values: [row] },
        mark: { type: 'point', filled: true, color: OKABE_ITO.black, size: 110, opacity: 1 },
        encoding: { x, y },
      },
      {
        data: { values: [{ ...row, text: `your pot, ${digits(row.brix, 1)} °Brix` }] },
        mark: { type: 'text', align: 'right', dx: -10, dy: -10 },
        encoding: { x, y, text: { field: 'text' } },
      },
    ]),
  ];
}
