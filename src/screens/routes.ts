/** Addresses of the places. Behind the hash, so that any static host will do. */

export const routes = {
  rack: '/',
  goodsIn: '/goods-in',
  toolBoard: '/tool-board',
  records: '/records',
  shop: '/shop',
  verify: '/records/verify',
  takeIn: '/shop/record-file',
  dayPage: '/shop/day',
  stand: (job: string) => `/job/${job}`,
  walk: (job: string) => `/job/${job}/walk`,
  check: (job: string) => `/job/${job}/check`,
  handOver: (job: string) => `/job/${job}/hand-over`,
  record: (job: string) => `/record/${job}`,
} as const;
