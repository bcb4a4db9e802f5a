-- The latest documents of a kind, by their day or by when they were typed, are found at the head of an index, as many as are asked for:
-- H2 goes through an index from its beginning only, so the latest stand there. The second replaces that of a kind's days.
create index document_recorded_ix on document (kind_rank desc, recorded_at desc);
drop index document_kind_ix;
create index document_latest_ix on document (kind_rank desc, doc_date desc, recorded_at desc);

-- The list of offers and of pieces begins with the latest: a page of it ends where it is full, and does not sort all there are.
create index offer_state_started_ix on offer_state (started_on desc, offer_id);
create index piece_state_found_ix on piece_state (found_on desc nulls last);
