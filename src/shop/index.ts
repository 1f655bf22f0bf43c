// The shop's server: for now the workroom's files and printing.
export { listenAt, type Place } from './listening.ts';
export { makeShop, type ShopWishes } from './server.ts';
