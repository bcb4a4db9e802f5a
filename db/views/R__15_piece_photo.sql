-- Made anew with all views: ${views}

-- The picture of each piece: the first of its photos, in the order she put them in. A piece without a photo has no row.
-- The picture itself is served at /photos/{photo_id}/small, /middle and /full.

drop view if exists piece_photo cascade;

create view piece_photo as
select o.piece_id, o.photo_id, o.stage, o.width, o.height
from (select p.piece_id, p.id as photo_id, p.stage, p.width, p.height,
             row_number() over (partition by p.piece_id order by p.sort_order, p.added_at, p.id) as rank_in_piece
      from photo p
      where p.piece_id is not null and p.taken_away_at is null) o
where o.rank_in_piece = 1;
