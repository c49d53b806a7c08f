export { connect } from './connect.ts';
