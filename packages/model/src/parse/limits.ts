/** How much of anything a plan may hold, and how far it may reach. Every reader of untrusted values uses these. */
export const LIMITS = {
  /** Metres from the site's origin, either way. */
  coordinate: 1_000_000,
  /** Points of one outline; larger drawings are underlays. */
  ringPoints: 500,
  /** Points of one line. */
  linePoints: 500,
  /** Outlines of one area: the outer one and those cut out of it. */
  ringsPerArea: 50,
  /** Outlines of the boundary, and as many inner ones. */
  boundaryOutlines: 20,
  features: 2_000,
  /** Points of all features together, and of those that come in as one step: more would not be sent. */
  featurePoints: 200_000,
  featurePointsAtOnce: 50_000,
  bases: 20,
  footprints: 20,
  siteMarks: 500,
  imageLayers: 20,
  sketches: 1_000,
  /** Points of one pencil stroke, measured line or rod. */
  sketchPoints: 500,
  /** Metres: the least and the largest radius of a clearance ring. */
  leastRingRadius: 0.1,
  ringRadius: 2_000,
  /** Inks that tell people apart, numbered from 0. */
  inks: 8,
  /** Pixels along one side of an image. */
  imagePixels: 100_000,
  routings: 26,
  /** Holes of one routing, with spare and removed ones. */
  holesPerRouting: 200,
  loopsPerRouting: 12,
  roundsPerRouting: 60,
  loopsPerRound: 12,
  teeSets: 8,
  /** So many can be added on the board; a file may bring more. */
  teeSetsOnBoard: 6,
  turnPointsPerHole: 3,
  waypointsPerHole: 20,
  relationsPerHole: 10,
  pinnedPerHole: 20,
  dispositions: 5_000,
  /** Metres, either way across one green. */
  greenSize: 200,
  /** Metres each side of a centreline. */
  corridorWidth: 500,
  /** Metres kept around a feature. */
  buffer: 2_000,
  /** Metres above ground of a landmark or trees. */
  height: 500,
  /** Metres by which a boundary may be off. */
  boundaryTolerance: 100,
  /** Characters of a name. */
  name: 80,
  /** Characters of a note, a reason, the words of a disposition. */
  note: 2_000,
  /** Characters of a finding's key. */
  findingKey: 400,
  /** Notes about one file; the rest are counted. */
  notes: 200,
} as const;
