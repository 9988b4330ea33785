// Which page stands at which address. Each page's script is loaded when it is first opened.

import { lazy, Suspense } from 'react';
import { Route, Router, Switch, useLocation } from 'wouter';
import { WaitingNote } from '../controls/waiting-note.tsx';
import { keepDay, useAsOfDay } from './as-of-day.ts';
import { loadPage } from './load-page.ts';
import { NotFoundPage } from './not-found-page.tsx';
import { PageBoundary } from './page-boundary.tsx';
import { Shell } from './shell.tsx';

const SetTheGaugePage = lazy(async () => ({
  default: (await loadPage(() => import('../features/set-the-gauge/set-the-gauge-page.tsx'))).SetTheGaugePage,
}));
const LabelPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/set-the-gauge/label-page.tsx'))).LabelPage,
}));
const StressingPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/stressing/stressing-page.tsx'))).StressingPage,
}));
const BedPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/stressing/bed-page.tsx'))).BedPage,
}));
const RecordPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/stressing/record-page.tsx'))).RecordPage,
}));
const CalibratePage = lazy(async () => ({
  default: (await loadPage(() => import('../features/calibrate/calibrate-page.tsx'))).CalibratePage,
}));
const ReviewPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/review/review-page.tsx'))).ReviewPage,
}));
const WhatsDuePage = lazy(async () => ({
  default: (await loadPage(() => import('../features/whats-due/whats-due-page.tsx'))).WhatsDuePage,
}));
const EquipmentPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/equipment/equipment-page.tsx'))).EquipmentPage,
}));
const PairPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/equipment/pair-page.tsx'))).PairPage,
}));
const PartPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/equipment/part/part-page.tsx'))).PartPage,
}));
const InDoubtPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/in-doubt/in-doubt-page.tsx'))).InDoubtPage,
}));
const LedgerPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/ledger/ledger-page.tsx'))).LedgerPage,
}));
const OpenPlantPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/open-plant/open-plant-page.tsx'))).OpenPlantPage,
}));
const AccountPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/account/account-page.tsx'))).AccountPage,
}));
const InvitationPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/account/invitation-page.tsx'))).InvitationPage,
}));
const DevicePage = lazy(async () => ({
  default: (await loadPage(() => import('../features/account/device-page.tsx'))).DevicePage,
}));
const PeoplePage = lazy(async () => ({
  default: (await loadPage(() => import('../features/people/people-page.tsx'))).PeoplePage,
}));
const RulesPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/rules/rules-page.tsx'))).RulesPage,
}));
const SignInPage = lazy(async () => ({
  default: (await loadPage(() => import('../features/sign-in/sign-in-page.tsx'))).SignInPage,
}));

export function App() {
  return (
    <Router hrefs={keepDay} aroundNav={(navigate, to, options) => navigate(keepDay(to), options)}>
      <Pages />
    </Router>
  );
}

function Pages() {
  const [location] = useLocation();
  const day = useAsOfDay();
  return (
    <Shell key={day}>
      <PageBoundary location={location}>
        <Suspense fallback={<WaitingNote />}>
          <Switch>
            <Route path="/" component={SetTheGaugePage} />
            <Route path="/p/:pair" component={LabelPage} />
            <Route path="/stressing" component={StressingPage} />
            <Route path="/stressing/bed/:bed" component={BedPage} />
            <Route path="/stressing/:number" component={RecordPage} />
            <Route path="/calibrate/:draft?" component={CalibratePage} />
            <Route path="/review/:number?" component={ReviewPage} />
            <Route path="/due" component={WhatsDuePage} />
            <Route path="/equipment" component={EquipmentPage} />
            <Route path="/equipment/:pair" component={PairPage} />
            <Route path="/part/:tag" component={PartPage} />
            <Route path="/in-doubt" component={InDoubtPage} />
            <Route path="/ledger" component={LedgerPage} />
            <Route path="/open" component={OpenPlantPage} />
            <Route path="/account" component={AccountPage} />
            <Route path="/invitation" component={InvitationPage} />
            <Route path="/device" component={DevicePage} />
            <Route path="/people" component={PeoplePage} />
            <Route path="/rules" component={RulesPage} />
            <Route path="/sign-in" component={SignInPage} />
            <Route component={NotFoundPage} />
          </Switch>
        </Suspense>
      </PageBoundary>
    </Shell>
  );
}
