import type { Market, MarketId } from './market.ts';
import { eastTexas } from './market-east-texas-facts.ts';
import { sanJoaquin } from './market-san-joaquin-facts.ts';
import { southeast } from './market-southeast-facts.ts';
import { westTexas } from './market-west-texas-facts.ts';

/** The four markets whose differences were read. */
export const markets: Readonly<Record<MarketId, Market>> = { southeast, sanJoaquin, eastTexas, westTexas };
