import { type Basis, type Caution, derived, joinCautions, type Refusal } from '../sources/basis';
import { usualCautions } from './cautions';

/** What a refusal says. */
export interface RefusalDetails {
  readonly reason: string;
  readonly instead: string;
  readonly basis?: readonly Basis[];
  readonly cautions?: readonly Caution[];
}

/** A refusal with the usual cautions. */
export const refusal = ({ reason, instead, basis = [], cautions = [] }: RefusalDetails): Refusal => ({
  tested: false,
  reason,
  instead,
  basis: basis.length === 0 ? [derived('what the process tables hold for this food')] : basis,
  cautions: joinCautions(cautions, usualCautions()),
});
