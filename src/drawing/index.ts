/** drawing: a bike drawn from its description, the walk round it, and the order of its bolts. */

export { BikeDrawing, type BikeDrawingProps, type Lit } from './bike-drawing';
export { type BikeGeometry, geometryOf } from './bike-geometry';
export { BoltOrder, type BoltOrderProps } from './bolt-order';
export { ClampForce, type ClampForceProps, type ClampForceRow } from './clamp-force';
export type { PartName } from './part-names';
export { type LitZone, placeOnBike, type Spot, zoneOnBike } from './places-on-bike';
export {
  type PointState,
  pointStates,
  WalkDrawing,
  type WalkDrawingProps,
  type WalkPoint,
} from './walk-drawing';
