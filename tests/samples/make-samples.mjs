// Writes the sample courses beside it: an invented course in the open Atlantic, clean and with the faults real maps have.
// Run it by hand after changing it: node tests/samples/make-samples.mjs
import { writeFileSync } from 'node:fs';

const PAR_LENGTHS = { 3: 155, 4: 365, 5: 490 };
const PARS = [4, 5, 4, 3, 4, 4, 3, 5, 4, 4, 4, 3, 5, 4, 4, 3, 5, 4];

/** Metres east and north of a place, near enough for a sample. */
const siteAt = (lon, lat) => {
  const shrink = Math.cos((lat * Math.PI) / 180);
  const degrees = (value) => Math.round(value * 1e7) / 1e7;
  return ([x, y]) => [degrees(lon + x / (111320 * shrink)), degrees(lat + y / 111200)];
};

const oval = ([x, y], long, wide, turn = 0) => {
  const points = Array.from({ length: 12 }, (_, i) => {
    const angle = (i * Math.PI) / 6;
    const [a, b] = [(Math.cos(angle) * long) / 2, (Math.sin(angle) * wide) / 2];
    return [x + a * Math.cos(turn) - b * Math.sin(turn), y + a * Math.sin(turn) + b * Math.cos(turn)];
  });
  return [...points, points[0]];
};
const box = (x, y, wide, high) => [[x, y], [x + wide, y], [x + wide, y + high], [x, y + high], [x, y]];

/** Holes side by side, up and down in turn, each tee beside the green before; par 5s turn once. Metres. */
function holesInMetres() {
  let y = 0;
  return PARS.map((par, index) => {
    const up = index % 2 === 0;
    const x = index * 90;
    const length = PAR_LENGTHS[par];
    const tee = [x, y];
    const green = [x, up ? y + length : y - length];
    const line = par === 5 ? [tee, [x + 20, (tee[1] + green[1]) / 2], green] : [tee, green];
    y = green[1];
    return { number: index + 1, par, line };
  });
}

const feature = (tags, type, coordinates) => ({ type: 'Feature', properties: tags, geometry: { type, coordinates } });
const collection = (features) => ({ type: 'FeatureCollection', note: 'Invented sample: no such course exists.', features });

function holeFeatures({ number, par, line }, at, tags = {}) {
  const [tee, green] = [line[0], line.at(-1)];
  return [
    feature({ golf: 'hole', ref: String(number), par: String(par), ...tags }, 'LineString', line.map(at)),
    feature({ golf: 'tee' }, 'Polygon', [box(tee[0] - 4, tee[1] - 6, 8, 12).map(at)]),
    feature({ golf: 'green' }, 'Polygon', [oval(green, 32, 24, 0.4).map(at)]),
  ];
}

function landFeatures(at) {
  return [
    feature({ leisure: 'golf_course', name: 'Made-up Links' }, 'Polygon', [box(-120, -400, 1850, 1400).map(at)]),
    feature({ golf: 'clubhouse', building: 'yes' }, 'Polygon', [box(-60, -60, 30, 15).map(at)]),
    feature({ golf: 'driving_range' }, 'Polygon', [box(100, 700, 100, 250).map(at)]),
    feature({ golf: 'fairway' }, 'Polygon', [box(-15, 100, 30, 240).map(at)]),
    feature({ golf: 'bunker', natural: 'sand' }, 'Polygon', [oval([25, 300], 12, 8).map(at)]),
    feature({ golf: 'water_hazard', natural: 'water' }, 'Polygon', [oval([400, 250], 60, 40).map(at)]),
    feature({ golf: 'lateral_water_hazard' }, 'LineString', [[600, 0], [610, 300]].map(at)),
    feature({ natural: 'wood' }, 'Polygon', [box(800, 800, 300, 80).map(at)]),
    feature({ highway: 'residential' }, 'LineString', [[-120, -410], [1730, -410]].map(at)),
    feature({ highway: 'service', golf: 'cartpath' }, 'LineString', [[-30, 0], [-30, 300]].map(at)),
    feature({ highway: 'footway' }, 'LineString', [[-60, -390], [-60, 990]].map(at)),
    feature({ highway: 'path', golf: 'path' }, 'LineString', [[45, 0], [45, 300]].map(at)),
    feature({ building: 'house' }, 'Polygon', [box(1000, -440, 12, 10).map(at)]),
  ];
}

const clean = (at) => collection([...holesInMetres().flatMap((hole) => holeFeatures(hole, at)), ...landFeatures(at)]);

/** One fault or two a hole; the test beside the importer says what becomes of each. */
function dirty(at) {
  const holes = holesInMetres();
  const parts = holes.map((hole) => holeFeatures(hole, at));
  const [line, tee, green] = [0, 1, 2];
  const changed = (number, change) => change(parts[number - 1], holes[number - 1]);
  changed(1, (p) => { p[line].properties.name = '<script>alert(1)</script>\u0007'; });
  changed(2, (p) => { delete p[line].properties.par; });
  changed(3, (p) => { p.splice(tee, 1); });
  changed(4, (p) => { p[line].geometry.coordinates.reverse(); });
  changed(5, (p, { line: [, end] }) => { p[green].geometry.coordinates = [oval([end[0] + 35, end[1] + 15], 30, 20).map(at)]; });
  changed(6, (p) => { p.splice(green, 1); });
  changed(7, (p) => { delete p[line].properties.ref; p[line].properties.name = 'Hole 7, The Kettle'; });
  changed(9, (p) => { p[line].properties.ref = '8'; });
  changed(10, (p) => {
    p[green].geometry.coordinates[0].pop();
    for (const position of p[line].geometry.coordinates) position.push(12.5);
  });
  changed(11, (p, { line: [start, end] }) => {
    const half = [start[0], (start[1] + end[1]) / 2];
    p[line].geometry = { type: 'MultiLineString', coordinates: [[start, half].map(at), [half, end].map(at)] };
  });
  changed(12, (p) => { p[green].geometry = { type: 'MultiPolygon', coordinates: [p[green].geometry.coordinates] }; });
  changed(13, (p, { line: [start, , end] }) => {
    const arc = Array.from({ length: 9 }, (_, i) => [start[0] + 60 * Math.sin((i * Math.PI) / 8), start[1] + ((end[1] - start[1]) * i) / 8]);
    p[line].geometry.coordinates = arc.map(at);
  });
  changed(14, (p) => { p.push(structuredClone(p[line])); });
  changed(15, (p, { line: [start, end] }) => {
    p.push(feature({ golf: 'hole', ref: '15A', par: '3' }, 'LineString', [[start[0] + 12, start[1] + 150], end].map(at)));
  });
  changed(16, (p) => { p[tee].geometry = { type: 'GeometryCollection', geometries: [p[tee].geometry] }; });
  changed(17, (p) => { delete p[line].properties.ref; });
  changed(18, (p) => { p[line].properties.par = '4/5'; });
  const rest = [
    { type: 'Feature', properties: { golf: 'bunker' }, geometry: null },
    feature({ amenity: 'bench' }, 'Point', at([0, 0])),
    feature({ golf: 'hole', ref: '3' }, 'Point', at([0, 0])),
    feature({ golf: 'bunker' }, 'Polygon', [[at([5, 5]), ['east', null], at([9, 5]), at([9, 9]), at([5, 5])]]),
    feature({ golf: 'hole', par: '4' }, 'LineString', [[9000, 0], [9000, 350]].map(at)),
    'not a feature',
  ];
  const land = landFeatures(at);
  const two = [box(-120, -400, 1850, 1400), box(1740, -400, 100, 100)].map((ring) => [ring.map(at)]);
  land[0] = feature({ leisure: 'golf_course', name: 'Made-up Links' }, 'MultiPolygon', two);
  return collection([...parts.flat(), ...land, ...rest]);
}

function twoCourses(at) {
  const north = ([x, y]) => at([x, y + 1200]);
  const first = holesInMetres().slice(0, 9).flatMap((hole) => holeFeatures(hole, at, { 'golf:course:name': 'Made-up Old' }));
  const second = holesInMetres().flatMap((hole) => holeFeatures(hole, north, { 'golf:course:name': 'Made-up New' }));
  return collection([...second, ...first]);
}

function threeNines(at) {
  const nines = ['Red', 'Blue', 'White'].flatMap((name, nine) =>
    holesInMetres().slice(0, 9).flatMap((hole) =>
      holeFeatures(hole, ([x, y]) => at([x, y + nine * 900]), { ref: `${name} ${hole.number}` }),
    ),
  );
  return collection(nines);
}

const swapped = (value) => JSON.parse(JSON.stringify(value), (_, part) =>
  Array.isArray(part) && part.length >= 2 && part.every((member) => typeof member === 'number') ? [part[1], part[0], ...part.slice(2)] : part);

const atlantic = siteAt(-20.5, 51.3);
const write = (name, value) => writeFileSync(new URL(name, import.meta.url), typeof value === 'string' ? value : `${JSON.stringify(value)}\n`);
write('clean.geojson', clean(atlantic));
write('dirty.geojson', dirty(atlantic));
write('swapped-by-pars.geojson', swapped(clean(([x, y]) => atlantic([y, -x]))));
write('swapped-by-range.geojson', swapped(clean(siteAt(-140.5, 38.2))));
write('two-courses.geojson', twoCourses(atlantic));
write('three-nines.geojson', threeNines(atlantic));
write('bare-list.json', clean(siteAt(-140.5, -38.2)).features.map(({ properties, geometry }) => ({ geometry, properties })));
write('one-feature.json', holeFeatures(holesInMetres()[0], atlantic)[0]);
write('truncated.geojson', JSON.stringify(clean(atlantic)).slice(0, 9000));
write('polar.geojson', clean(siteAt(150, 86)));
write('across-the-date-line.geojson', clean(([x, y]) => {
  const [lon, lat] = siteAt(179.995, -17)([x, y]);
  return [lon > 180 ? Math.round((lon - 360) * 1e7) / 1e7 : lon, lat];
}));
write('metres.geojson', clean(([x, y]) => [400000 + x, 5000000 + y]));
