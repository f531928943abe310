/** Addresses of the places. Behind the hash, so that any static host will do. */

export const routes = {
  rack: '/',
  goodsIn: '/goods-in',
  toolBoard: '/tool-board',
  wrench: (id: string) => `/tool-board/${encodeURIComponent(id)}`,
  calibration: (id: string) => `/tool-board/${encodeURIComponent(id)}/calibration`,
  reachBack: (id: string, doubt: string) =>
    `/tool-board/${encodeURIComponent(id)}/bikes/${encodeURIComponent(doubt)}`,
  catalogue: '/catalogue',
  catalogueStep: (id: string) => `/catalogue/step/${id}`,
  /** Without an id, a new one. */
  catalogueOwn: (id: string) => (id === '' ? '/catalogue/own' : `/catalogue/own/${id}`),
  catalogueChanges: '/catalogue/changes',
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
