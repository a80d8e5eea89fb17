/**
 * stillroom: calculations for people who preserve food. Each module is also a subpath of the package.
 * @module
 */
export * from './errors/index';
export * from './quantity/index';
export * from './sources/index';
