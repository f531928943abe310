/** What every test in jsdom starts from: matchers for the page, and an empty page after each test. */

import '@testing-library/jest-dom/vitest';
import { cleanup } from '@testing-library/react';
import { afterEach } from 'vitest';

afterEach(cleanup);
