/** drawing: a bike drawn from its description, the walk round it, and the order of its bolts. */

export { BikeDrawing, type BikeDrawingProps, type Lit } from './bike-drawing';
export { type BikeGeometry, geometryOf } from './bike-geometry';
export { placeOnBike, type Spot, zoneOnBike } from './places-on-bike';
