/**
 * Jars: sizes and mouths, how much goes in at a headspace, jars to ready, canner loads, headspace checks, what
 * heating and cooling do inside a jar, and whether it sealed.
 * @module
 */
export { type CanLoads, type CanLoadsInput, type CannerInput, canLoads } from './canLoads';
export { type CheckHeadspaceInput, checkHeadspace, type HeadspaceCheck } from './checkHeadspace';
export { type DescribeJarInput, describeJar, type Jar, type JarInput, type MeasuredJar } from './describeJar';
export { type FilledJar, type FillJarInput, fillJar } from './fillJar';
export { type JarSize, jarSizes } from './jarSizes';
export { type JarsFor, type JarsForInput, jarsFor } from './jarsFor';
export type { JarMouth } from './tables';
