/** The heats of a food of which only the moisture is known, by the equations of Earle. */
import type { Basis } from '../sources/basis';
import { basisOf } from '../sources/table';
import { correlation } from './tables';

/** Specific heats in kJ/(kg K) above freezing and frozen, and the heat to freeze it in kJ/kg. */
export interface HeatsByMoisture {
  readonly above: number;
  readonly below: number;
  readonly latent: number;
  readonly basis: readonly Basis[];
}

/**
 * With w the share of water: cp = 4.19 w + 0.84 (1 - w) above freezing and 2.1 w + 0.84 (1 - w) below, latent heat
 * 335 w. Source: Earle, Appendix 7.
 */
export function heatsByMoisture(w: number): HeatsByMoisture {
  const dry = 1 - w;
  return {
    above: 4.19 * w + 0.84 * dry,
    below: 2.1 * w + 0.84 * dry,
    latent: 335 * w,
    basis: [
      basisOf(correlation('earle-cp-above'), 'heat', 'specific heat above freezing, by moisture'),
      basisOf(correlation('earle-cp-below'), 'heat', 'specific heat when frozen, by moisture'),
      basisOf(correlation('earle-latent'), 'heat', 'latent heat, by moisture'),
    ],
  };
}
