-- An offer that is over still stands where else it was offered until she has taken it down there; a row says that she has.
-- It counts for the end it was said of alone: undo the sale and sell again, and it is asked anew.
create table offer_taken_down (
    offer_id uuid not null,
    channel_id uuid not null,
    ended_on date not null,
    done_on date not null,
    constraint offer_taken_down_pk primary key (offer_id, channel_id),
    constraint offer_taken_down_offer_fk foreign key (offer_id) references offer (id) on delete cascade,
    constraint offer_taken_down_channel_fk foreign key (channel_id) references channel (id) on delete cascade
);

-- Channels on which nothing is left standing, such as a market stall: there is nothing to take down there.
create table channel_unlisted (
    channel_id uuid not null,
    constraint channel_unlisted_pk primary key (channel_id),
    constraint channel_unlisted_channel_fk foreign key (channel_id) references channel (id) on delete cascade
);
