-- Several like pieces put up at once, each sold by itself: every one has an offer of its own, and the offers of one group
-- carry the same id here. Nothing for an offer that stands alone. It is no reference: any of the group may be removed.
alter table offer add column alike_id uuid;

-- The others of a group are looked up on the page of each of them.
create index offer_alike_ix on offer (alike_id);
