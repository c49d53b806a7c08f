export { writeBoardFile } from './board/board-file.ts';
export type { CourseFile, TakenCourse } from './course-file.ts';
export { readCourseFile } from './course-file.ts';
export type { LonLat } from './geojson/element.ts';
export { LARGEST_COURSE_FILE, tooLargeSentence } from './json-text.ts';
export type { Note } from './note.ts';
export type { MapUnit } from './survey/map-units.ts';
export { MAP_UNITS, METRES_PER_MAP_UNIT } from './survey/map-units.ts';
export { lonLatOf } from './survey/site-plane.ts';
