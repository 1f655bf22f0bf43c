// What travels between the workroom and the shop: addresses, words in them, and the form of answers.
export { filesPath, type PagesTold, pagePath, pagesPath, pagesToldIn } from './printing.ts';
export { isRefusal, type Refusal, refusalOf } from './refusal.ts';
export {
  type PageWishes,
  type PrintedPage,
  type PrintHand,
  type PrintPaper,
  type PrintWishes,
  pageWidths,
  pageWishesIn,
  pageWishesText,
  printHands,
  printPapers,
  printWishesIn,
  printWishesText,
  type Query,
  type WishProblem,
} from './wishes.ts';
