-- Her own patterns for the text of an offer: plain text with a few named blanks, usually one for each channel.
create table listing_pattern (
    id uuid not null,
    name varchar(80) not null,
    channel_id uuid,
    title varchar(300) not null,
    body varchar(4000) not null,
    version bigint default 0 not null,
    constraint listing_pattern_pk primary key (id),
    constraint listing_pattern_name_uk unique (name),
    constraint listing_pattern_channel_fk foreign key (channel_id) references channel (id) on delete set null
);

-- The text of an offer as she edited it; where there is none, it is made anew whenever it is looked at.
create table listing_text (
    offer_id uuid not null,
    pattern_id uuid not null,
    title varchar(300) not null,
    body varchar(8000) not null,
    version bigint default 0 not null,
    constraint listing_text_pk primary key (offer_id, pattern_id),
    constraint listing_text_offer_fk foreign key (offer_id) references offer (id) on delete cascade,
    constraint listing_text_pattern_fk foreign key (pattern_id) references listing_pattern (id) on delete cascade
);

-- Her own words for a line of care that comes with the program, or that she leaves it out; the line is named by its id.
create table care_word (
    care_id varchar(20) not null,
    words varchar(400) not null,
    left_out boolean not null,
    constraint care_word_pk primary key (care_id),
    constraint care_word_ck check (left_out or words <> '')
);

-- A line of care of her own, for whatever a supply, or any supply of a line, was used on.
create table supply_care (
    id uuid not null,
    supply_id uuid,
    supply_line_id uuid,
    words varchar(400) not null,
    version bigint default 0 not null,
    constraint supply_care_pk primary key (id),
    constraint supply_care_supply_fk foreign key (supply_id) references supply (id) on delete cascade,
    constraint supply_care_line_fk foreign key (supply_line_id) references supply_line (id) on delete cascade,
    constraint supply_care_of_ck check ((supply_id is null) <> (supply_line_id is null))
);
