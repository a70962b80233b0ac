// The door of geometry: points, curves, paths, parallels and solving, in millimetres and radians, x right, y down.
// It knows nothing of sewing, toys or paper, and never will.

export * from '../../body/point';
export * from './arc';
export * from './bounds';
export * from './curve';
export * from './flatten';
export * from './length';
export * from './offset';
export * from './parallel';
export * from './path';
export * from './ring';
export * from './shrunk';
export * from './smooth';
export * from './solve';
export * from './svg';
