/**
 * Jars: sizes and mouths, how much goes in at a headspace, jars to ready, canner loads, headspace checks, what
 * heating and cooling do inside a jar, and whether it sealed.
 * @module
 */

export type { JarInput, MeasuredJar } from '../words/jar';
export type { JarMouth } from '../words/mouth';
export { type CheckHeadspaceInput, checkHeadspace, type HeadspaceCheck } from './checkHeadspace';
export { type CheckSealInput, checkSeal, type SealCheck } from './checkSeal';
export { type DescribeJarInput, describeJar, type Jar, type WeighedJarInput } from './describeJar';
export { type ExpansionInJar, type ExpansionInJarInput, expansionInJar } from './expansionInJar';
export { type FilledJar, type FillJarInput, fillJar } from './fillJar';
export { type JarsFor, type JarsForInput, jarsFor } from './jarsFor';
export type { Handling } from './liquidLost';
export { type CannerInput, type LoadsFor, type LoadsForInput, loadsFor } from './loadsFor';
export { type SealVacuum, type SealVacuumInput, sealVacuum } from './sealVacuum';
